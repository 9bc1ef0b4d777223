import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import type { BuildOptions, BuildResult } from "../build.ts";
import { TargetRefused } from "../bundle/swap.ts";
import { reportJson } from "../report/json.ts";
import { counted } from "../report/text.ts";
import { type Call, type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { contentFolder, hasErrors, printReport } from "./content.ts";
import { type Line, type Progress, progressOn } from "./progress.ts";
import { buildSingle } from "./single.ts";

export const toOption = {
  type: "string",
  value: "DIR",
  help: "where the site goes (default: _site)",
} as const;

export const build: Command = {
  name: "build",
  summary: "builds the site",
  usage: "[--content DIR] [--to DIR] [--single MODULE] [--fresh] [--json]",
  options: {
    content: contentOption,
    to: toOption,
    single: {
      type: "string",
      value: "MODULE",
      help: "one self-contained file of a module instead, to carry along (--to FILE; default: MODULE.html)",
    },
    fresh: { type: "boolean", help: "build everything, whatever is kept in .cache" },
    json: jsonOption,
  },
  async run(call, output) {
    const progress = progressOn(call.flag("json") ? silent : process.stderr);
    const contentDir = contentFolder(call);
    const cacheDir = call.flag("fresh") ? undefined : cacheFolder();
    const { PictureShop } = await import("../pictures/shop.ts");
    const pictures = new PictureShop({ contentDir, cacheDir: picturesIn(cacheDir) });
    const options = { contentDir, progress, cacheDir, pictures };
    const single = call.text("single");
    if (single !== undefined)
      return buildSingle(single, call, output, (siteDir) => runBuild({ ...options, siteDir }));
    const result = await runBuild({ ...options, siteDir: siteFolder(call) });
    if (result.diagnostics.length > 0 && !call.flag("json")) printReport(result, output);
    const failed = hasErrors(result.diagnostics);
    if (call.flag("json"))
      printJson(
        output,
        failed ? reportJson(result.diagnostics) : { ...result.summary, ...reportJson(result.diagnostics) },
      );
    else if (failed) output.err(failureWords(firstPage(call)));
    else output.out(successWords(result, firstPage(call)));
    return failed ? 1 : 0;
  },
};

const firstPage = (call: Call): string => join(siteFolder(call), "index.html");

const failureWords = (page: string): string =>
  existsSync(page) ? "Nothing is built; the last good site stands as it was.\n" : "Nothing is built.\n";

const successWords = ({ summary: { pages, modules, ms } }: BuildResult, page: string): string =>
  `${counted(pages, "page")} of ${counted(modules, "module")} in ${ms} ms: ${page}\n`;

/** The site folder of a call. Throws a WrongCall where building there would put an end to the content. */
export function siteFolder(call: Call): string {
  const site = resolve(call.text("to") ?? "_site");
  const content = contentFolder(call);
  if (`${content}/`.startsWith(`${site}/`) || `${site}/`.startsWith(`${content}/`)) {
    throw new WrongCall(
      `The site can't be built at ${site}: it and the content folder ${content} lie in one another.`,
    );
  }
  return site;
}

/** Where sites are kept by digest. May be deleted at any time. */
export const cacheFolder = (): string => resolve(".cache", "benchwright");

/** Made pictures lie beside the sites. */
export const picturesIn = (cacheDir: string | undefined): string | undefined =>
  cacheDir === undefined ? undefined : join(cacheDir, "pictures");

/** Builds. The stages are loaded only now, so that other commands start without them. */
async function runBuild({
  progress,
  ...options
}: BuildOptions & { progress: Progress }): Promise<BuildResult> {
  const { buildSite } = await import("../build.ts");
  try {
    return await refusable(buildSite({ ...options, tell: progress.tell }));
  } finally {
    progress.end();
  }
}

/** For a program there is one JSON value and nothing else. */
const silent: Line = { write: () => undefined };

/** A target that is refused is a wrong call. */
export async function refusable<Result>(building: Promise<Result>): Promise<Result> {
  try {
    return await building;
  } catch (cause) {
    throw cause instanceof TargetRefused ? new WrongCall(cause.message) : cause;
  }
}
