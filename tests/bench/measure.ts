/** Runs a program from its start to its end and says how long it took and how much memory it held. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runCommand } from "../support/run-command.ts";
import { median } from "./row.ts";

export interface Measured {
  readonly ms: number;
  /** The largest of its Node processes, in MiB. Helper programs that are not Node's, such as esbuild's, are not counted. */
  readonly memory: number;
}

const usage = fileURLToPath(new URL("usage.mjs", import.meta.url));

/** `scratch` is the folder in which it works, and where all that it keeps for the next run goes. */
export async function measure(command: string, args: readonly string[], scratch: string): Promise<Measured> {
  const notes = `${scratch}/usage-${process.hrtime.bigint()}.txt`;
  const ended = await runCommand(command, args, {
    cwd: scratch,
    env: { BENCH_USAGE: notes, NODE_OPTIONS: `--import=${usage}`, XDG_CACHE_HOME: `${scratch}/.cache` },
  });
  if (ended.code !== 0)
    throw new Error(`${command} ${args.join(" ")} ended with ${ended.code}\n${ended.stdout}${ended.stderr}`);
  const kibibytes = readFileSync(notes, "utf8").trim().split("\n").map(Number);
  return { ms: ended.ms, memory: Math.max(...kibibytes) / 1024 };
}

/** The median of time, the most of memory. */
export function middleOf(all: readonly Measured[]): Measured {
  return { ms: median(all.map(({ ms }) => ms)), memory: Math.max(...all.map(({ memory }) => memory)) };
}
