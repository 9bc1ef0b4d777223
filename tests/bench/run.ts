/**
 * What `npm run bench` runs: measures what the design has budgets for and prints one table. Sizes of the made-up
 * programmes can be given: `npm run bench -- 100 1000`. Takes some minutes; ends with 1 where something could not be measured.
 */
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { projectDir } from "../support/project.ts";
import { runTool } from "../support/run-command.ts";
import { type BuildTimes, buildRows, growthRows, rebuildRows, timeBuilds } from "./builds.ts";
import { chromiumRows } from "./in-chromium.ts";
import { orderRows } from "./orders.ts";
import { pageRows } from "./pages.ts";
import { planRows } from "./plans.ts";
import { recordRows } from "./records.ts";
import { hasBudget, isWithin, type Row, tableOf } from "./row.ts";
import { searchRows } from "./search.ts";
import { itemsRows, scoreRows } from "./sittings.ts";

const given = process.argv.slice(2).map(Number);
const sizes = given.length > 0 ? given : [100, 1000, 5000];
if (!sizes.every((size) => Number.isInteger(size) && size >= 3))
  throw new Error("sizes are whole numbers from 3");

const scratch = mkdtempSync(join(tmpdir(), "benchwright-bench-"));
process.on("exit", () => rmSync(scratch, { recursive: true, force: true }));
for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => process.exit(1));

const load = loadavg()[0]!.toFixed(1);
const rows: Row[] = [];
await section("orders", () => orderRows());
await section("plans", () => planRows());
await section("sittings", () => scoreRows(scratch));
await section("statistics of sittings", () => itemsRows(scratch));
await section("records", () => recordRows(scratch));
await section("demo", demo);
const times: BuildTimes[] = [];
for (const size of sizes) await section(`${size} modules`, () => programmeOf(size));
rows.push(...growthRows(times));

console.log(
  `\nNode ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? "unknown"}, load at the start ${load}\n`,
);
console.log(tableOf(rows));
const budgeted = rows.filter(hasBudget);
console.log(`\n${budgeted.filter(isWithin).length} of ${budgeted.length} budgets are kept.`);

async function demo(): Promise<Row[]> {
  const content = join(projectDir, "content");
  const site = join(scratch, "demo");
  const built = await runTool(["build", "--content", content, "--to", site]);
  if (built.code !== 0) throw new Error(built.stderr);
  return pageRows(content, site, "demo");
}

async function programmeOf(size: number): Promise<Row[]> {
  const folder = join(scratch, String(size));
  mkdirSync(folder);
  const time = await timeBuilds(folder, size);
  times.push(time);
  const rebuilt = size > 1000 ? [] : await rebuildRows(folder, time);
  const contents =
    size === 1000
      ? [
          ...pageRows(join(folder, "content"), join(folder, "site"), "1,000 modules"),
          ...searchRows(join(folder, "site")),
          ...(await chromiumRows(join(folder, "site"), "1,000 modules")),
        ]
      : [];
  rmSync(folder, { recursive: true });
  return [...buildRows(time), ...rebuilt, ...contents];
}

/** Says what is being measured; what can't be is said, and the rest goes on. */
async function section(name: string, measure: () => Row[] | Promise<Row[]>): Promise<void> {
  const began = performance.now();
  try {
    rows.push(...(await measure()));
    console.log(`measured: ${name} (${((performance.now() - began) / 1000).toFixed(0)} s)`);
  } catch (error) {
    console.log(`not measured: ${name}: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  }
}
