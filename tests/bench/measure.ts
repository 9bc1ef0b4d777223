/** Runs a program from its start to its end and says how long it took and how much memory it held. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runCommand } from "../support/run-command.ts";
import { median } from "./row.ts";

export interface Measured {
  readonly ms: number;
  /** What processors spent on its Node processes, all their threads together, in ms: what else the machine does is not in it. */
  readonly cpu: number;
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
  const noted = readFileSync(notes, "utf8").trim().split("\n").map(twoNumbers);
  return {
    ms: ended.ms,
    cpu: noted.reduce((sum, [, microseconds]) => sum + microseconds, 0) / 1000,
    memory: Math.max(...noted.map(([kibibytes]) => kibibytes)) / 1024,
  };
}

/** The median of time, the most of memory. */
export function middleOf(all: readonly Measured[]): Measured {
  return {
    ms: median(all.map(({ ms }) => ms)),
    cpu: median(all.map(({ cpu }) => cpu)),
    memory: Math.max(...all.map(({ memory }) => memory)),
  };
}

const twoNumbers = (line: string): [number, number] => {
  const [first, second] = line.split(" ").map(Number);
  return [first!, second!];
};
