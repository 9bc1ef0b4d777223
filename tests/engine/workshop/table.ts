import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { projectDir } from "../../support/project.ts";

export type Row = ReadonlyMap<string, string>;

/** The rows of a table in tests/reference/trade, by the names in its head line. Lines that begin with "# " are comments. */
export function readTable(file: string): Row[] {
  const text = readFileSync(`${projectDir}/tests/reference/trade/${file}`, "utf8");
  const [head, ...rows] = text
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("# "))
    .map(cells);
  return rows.map((row) => new Map(head!.map((name, column) => [name, row[column] ?? ""])));
}

function cells(line: string): string[] {
  return [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map(([, cell]) => cell!.replaceAll('"', ""));
}

/** The named number of a row; fails where the table has none. */
export function figure(row: Row, name: string): number {
  const text = row.get(name) ?? "";
  expect(text, name).toMatch(/^-?\d/);
  return Number.parseFloat(text);
}

/** Fails unless the two agree to the given part of their size. */
export function expectNear(found: number, expected: number, part: number, what: string): void {
  expect(Math.abs(found - expected), `${what}: ${found} for ${expected}`).toBeLessThanOrEqual(
    part * Math.abs(expected),
  );
}
