/** Compiles a browser entry to a text, for what is not a fingerprinted file of the site. */
import * as esbuild from "esbuild";

/** The oldest browsers for which scripts and styles are compiled. */
export const browsers = ["chrome110", "firefox115", "safari16"];

/** As a classic script. Throws where that can't be done, which is a fault of the tool. */
export async function oneScript(
  entry: string,
  words: Pick<esbuild.BuildOptions, "plugins" | "define"> = {},
): Promise<string> {
  const { outputFiles } = await esbuild.build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    target: browsers,
    charset: "utf8",
    logLevel: "silent",
    ...words,
  });
  return outputFiles[0]!.text;
}
