/** Times whole builds against plain Eleventy on the same files, in the same run. */
import { rmSync } from "node:fs";
import { projectDir } from "../support/project.ts";
import { localBin, toolEntry } from "../support/run-command.ts";
import { generate } from "./generate.ts";
import { type Measured, measure, middleOf } from "./measure.ts";
import { rebuildTime } from "./rebuild.ts";
import type { Row } from "./row.ts";

export interface BuildTimes {
  readonly modules: number;
  readonly plain: Measured;
  readonly cold: Measured;
  readonly warm: Measured;
}

/**
 * The scratch folder holds `content`, and afterwards `site` and `plain`. The kinds of builds take turns, so that what else
 * the machine does falls on all of them.
 */
export async function timeBuilds(scratch: string, modules: number): Promise<BuildTimes> {
  generate(`${scratch}/content`, { modules, seed: 1 });
  const plain: Measured[] = [];
  const cold: Measured[] = [];
  const warm: Measured[] = [];
  // The large one takes a minute, and what disturbs a run weighs less in it.
  for (let time = 0; time < (modules > 1000 ? 1 : 3); time++) {
    forget(scratch, ["plain", "site", ".cache"]);
    plain.push(await plainEleventy(scratch));
    cold.push(await build(scratch));
    forget(scratch, ["site"]);
    warm.push(await build(scratch));
  }
  return { modules, plain: middleOf(plain), cold: middleOf(cold), warm: middleOf(warm) };
}

function forget(scratch: string, folders: readonly string[]): void {
  for (const folder of folders) rmSync(`${scratch}/${folder}`, { recursive: true, force: true });
}

function plainEleventy(scratch: string): Promise<Measured> {
  const config = `--config=${projectDir}/tests/bench/plain-eleventy.config.mjs`;
  return measure(localBin("eleventy"), [config, "--input=content", "--output=plain", "--quiet"], scratch);
}

function build(scratch: string): Promise<Measured> {
  return measure(process.execPath, [toolEntry, "build", "--content", "content", "--to", "site"], scratch);
}

/** Rows of one size. */
export function buildRows({ modules, plain, cold, warm }: BuildTimes): Row[] {
  const of = `${modules.toLocaleString("en")} modules`;
  const budgets = modules === 1000 ? { cold: 2.5, warm: 1.2 } : { cold: undefined, warm: undefined };
  return [
    { what: `${of}: plain Eleventy`, measured: plain.ms, unit: "ms" },
    { what: `${of}: full build, cold`, measured: cold.ms, unit: "ms" },
    {
      what: `${of}: full build, cold, against plain Eleventy`,
      measured: cold.ms / plain.ms,
      unit: "×",
      ...budget(budgets.cold),
    },
    {
      what: `${of}: full build, warm, against plain Eleventy`,
      measured: warm.ms / plain.ms,
      unit: "×",
      ...budget(budgets.warm),
    },
    { what: `${of}: peak memory of plain Eleventy`, measured: plain.memory, unit: "MiB" },
    {
      what: `${of}: peak memory of the full build`,
      measured: Math.max(cold.memory, warm.memory),
      unit: "MiB",
    },
  ];
}

const budget = (most: number | undefined): Pick<Row, "budget"> =>
  most === undefined ? {} : { budget: most };

/** How the time of a cold build grows from 1,000 to 5,000 modules, where both were measured. */
export function growthRows(all: readonly BuildTimes[]): Row[] {
  const coldOf = (size: number) => all.find(({ modules }) => modules === size)?.cold.ms;
  const [small, large] = [coldOf(1000), coldOf(5000)];
  if (small === undefined || large === undefined) return [];
  return [
    {
      what: "growth of the full build from 1,000 to 5,000 modules",
      measured: large / small,
      unit: "×",
      budget: 5.2,
    },
  ];
}

export async function rebuildRows(scratch: string, { modules, cold }: BuildTimes): Promise<Row[]> {
  const ms = await rebuildTime(scratch);
  const what = `${modules.toLocaleString("en")} modules: rebuild after one changed, against the full build`;
  return [{ what, measured: ms / cold.ms, unit: "×", ...budget(modules === 1000 ? 0.15 : undefined) }];
}
