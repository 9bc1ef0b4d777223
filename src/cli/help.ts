/** Help texts, made from the table of commands. */
import { codes } from "../model/codes.ts";
import type { Command } from "./command.ts";

export function helpAll(commands: readonly Command[]): string {
  const width = Math.max(...commands.map(({ name }) => name.length));
  const lines = commands.map(({ name, summary }) => `  ${name.padEnd(width)}  ${summary}`);
  return [
    "benchwright: makes a training site from overhaul procedures written in Markdown.",
    "",
    "Usage: benchwright COMMAND [options]",
    "",
    ...lines,
    "",
    "benchwright help COMMAND tells more of a command, benchwright help codes lists what check can find.",
    "benchwright --version tells which edition this is.",
    "A command ends with 0 when done, 1 when the content or a file has errors, 2 when the call is wrong.",
    "",
  ].join("\n");
}

export function helpOne(command: Command): string {
  const rows = Object.entries(command.options).map(
    ([name, { value, help }]) => [`--${name}${value === undefined ? "" : ` ${value}`}`, help] as const,
  );
  const width = Math.max(0, ...rows.map(([name]) => name.length));
  const options = rows.map(([name, help]) => `  ${name.padEnd(width)}  ${help}`);
  return [
    `benchwright ${command.name}: ${command.summary}`,
    "",
    `Usage: benchwright ${command.name} ${command.usage}`,
    "",
    ...options,
    ...(command.more === undefined ? [] : ["", command.more()]),
    "",
  ].join("\n");
}

/** Every code that `check` can report, made from the catalogue. */
export function helpCodes(): string {
  const blocks = Object.entries(codes).map(
    ([code, { severity, means, mend }]) => `${code} (${severity})\n  ${means}\n  ${mend}\n`,
  );
  return blocks.join("\n");
}
