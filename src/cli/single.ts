/** `build --single`: a module in one file, to carry along. */
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import type { BuildResult } from "../build.ts";
import { language } from "../engine/words.ts";
import { reportJson } from "../report/json.ts";
import { counted } from "../report/text.ts";
import { toolFolder } from "../tool-folder.ts";
import { wordsOfScripts } from "../words/of-scripts.ts";
import { type Call, type ExitCode, type Output, printJson, WrongCall } from "./command.ts";
import { contentFolder, hasErrors, printReport } from "./content.ts";
import { noSuchModule } from "./no-such-module.ts";
import { writeWhole } from "./write-whole.ts";

/** A phone takes seconds to open more. */
const easyToOpen = 20_000_000;

/**
 * Builds the site in a folder that is taken away again, and makes one file of what belongs to the module. Throws a
 * WrongCall for a module that there is not, and for a place where no file can be written.
 */
export async function buildSingle(
  module: string,
  call: Call,
  output: Output,
  build: (siteDir: string) => Promise<BuildResult>,
): Promise<ExitCode> {
  const file = fileOf(call, module);
  const folder = mkdtempSync(join(tmpdir(), "benchwright-single-"));
  try {
    const site = join(folder, "site");
    const result = await build(site);
    if (result.diagnostics.length > 0 && !call.flag("json")) printReport(result, output);
    if (hasErrors(result.diagnostics)) return failed(result, call, output);
    const made = await singleOf(site, module, contentFolder(call));
    write(file, made.html);
    tell({ file, module, parts: made.parts, bytes: Buffer.byteLength(made.html) }, result, call, output);
    return 0;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function fileOf(call: Call, module: string): string {
  const file = resolve(call.text("to") ?? `${module}.html`);
  if (existsSync(file) && statSync(file).isDirectory())
    throw new WrongCall(`--to ${file} is a folder; with --single it names a file, such as ${module}.html.`);
  return file;
}

async function singleOf(
  site: string,
  module: string,
  contentDir: string,
): Promise<{ html: string; parts: number }> {
  const { makeSingle } = await import("../single/single.ts");
  const { oneScript } = await import("../bundle/one-script.ts");
  const modules = readdirSync(join(site, "modules"), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? [entry.name] : [],
  );
  if (!modules.includes(module)) throw noSuchModule(module, modules);
  const words = await wordsOfScripts(language, contentDir);
  const script = await oneScript(join(toolFolder("src/browser"), "single.ts"), words);
  return makeSingle({ site, module, script, layoutsDir: toolFolder("layouts") })!;
}

function write(file: string, text: string): void {
  try {
    writeWhole(dirname(file), basename(file), text);
  } catch (cause) {
    throw new WrongCall(
      `${file} can't be written: ${cause instanceof Error ? cause.message : String(cause)}. Name another place with --to.`,
    );
  }
}

interface Made {
  readonly file: string;
  readonly module: string;
  readonly parts: number;
  readonly bytes: number;
}

function tell(made: Made, { summary, diagnostics }: BuildResult, call: Call, output: Output): void {
  if (call.flag("json")) {
    printJson(output, {
      ...{ file: made.file, module: made.module, pages: made.parts, bytes: made.bytes, ms: summary.ms },
      ...reportJson(diagnostics),
    });
    return;
  }
  const size = `${(made.bytes / 1e6).toFixed(1)} MB`;
  output.out(`${counted(made.parts, "page")} in one file of ${size}: ${made.file}\n`);
  if (made.bytes > easyToOpen)
    output.err(
      `${size} are much for a phone to open (${easyToOpen / 1e6} MB go well). Its pictures are most of it: make them smaller.\n`,
    );
}

function failed({ diagnostics }: BuildResult, call: Call, output: Output): ExitCode {
  if (call.flag("json")) printJson(output, reportJson(diagnostics));
  else output.err("No file is written.\n");
  return 1;
}
