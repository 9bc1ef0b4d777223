/** Writes what pages of the competency record load: scripts of one call each, and the lists of withdrawals as they are. */
import {
  type ModuleData,
  moduleDataFile,
  type ProgrammeData,
  programmeDataFile,
} from "../model/record-data.ts";
import { withdrawalsPath } from "../model/released.ts";
import { type Kept, keep, sortOut } from "./kept.ts";
import type { Page } from "./page.ts";
import { writeEach, writerTo } from "./write.ts";

/** Gives the files that stand as they would come out, and are not written again. */
export function writeModuleData(all: readonly ModuleData[], outDir: string, kept: Kept): string[] {
  const { changed, unchanged } = sortOut(all.map(pageOf), kept);
  writeEach(changed, outDir, kept.note);
  keep(changed, kept, outDir);
  return unchanged;
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
export function writeProgrammeData(data: ProgrammeData, outDir: string): void {
  const write = writerTo(outDir);
  write(programmeDataFile, script("programme", data));
  for (const [mentor, list] of data.withdrawals) write(withdrawalsPath(mentor), `${JSON.stringify(list)}\n`);
}

const script = (name: string, data: ProgrammeData | ModuleData): string =>
  `benchwrightData(${JSON.stringify(name)}, ${JSON.stringify(data)});\n`;
