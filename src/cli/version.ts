/** Which edition of the tool this is, as its package says. */
import { readFileSync } from "node:fs";
import { toolFolder } from "../tool-folder.ts";
import type { ExitCode, Output } from "./command.ts";

export function version(output: Output): ExitCode {
  const about = JSON.parse(readFileSync(toolFolder("package.json"), "utf8")) as { version: string };
  output.out(`${about.version}\n`);
  return 0;
}
