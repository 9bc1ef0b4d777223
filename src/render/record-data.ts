/** Writes what pages of the competency record load: scripts of one call each, and the lists of withdrawals as they are. */
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import {
  type ModuleData,
  moduleDataFile,
  type ProgrammeData,
  programmeDataFile,
} from "../model/record-data.ts";
import { withdrawalsPath } from "../model/released.ts";
import type { Page } from "./eleventy.ts";
import { type Kept, keep, linkUnchanged } from "./kept.ts";

/** Data that would come out as it stands in `kept` is taken from there. */
export async function writeModuleData(all: readonly ModuleData[], outDir: string, kept: Kept): Promise<void> {
  const group = { name: "record-data", pages: all.map(pageOf) };
  const changed = linkUnchanged([group], kept, outDir);
  for (const { pages } of changed) for (const { file, make } of pages) await write(outDir, file, make());
  keep(changed, kept, outDir);
}

function pageOf(data: ModuleData): Page {
  const { module } = data.release;
  return {
    file: moduleDataFile(module),
    make: () => script(module, data),
    inputs: [data.release, ...data.earlier],
  };
}

/** The lists of withdrawals are also files of their own, where anybody can check a sign-off against them. */
export async function writeProgrammeData(data: ProgrammeData, outDir: string): Promise<void> {
  await write(outDir, programmeDataFile, script("programme", data));
  for (const [mentor, list] of data.withdrawals)
    await write(outDir, withdrawalsPath(mentor), `${JSON.stringify(list)}\n`);
}

const script = (name: string, data: ProgrammeData | ModuleData): string =>
  `benchwrightData(${JSON.stringify(name)}, ${JSON.stringify(data)});\n`;

async function write(outDir: string, file: string, text: string): Promise<void> {
  await mkdir(dirname(join(outDir, file)), { recursive: true });
  await writeFile(join(outDir, file), text);
}
