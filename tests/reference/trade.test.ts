/**
 * Every row of every table in tests/reference/trade, against the engine. How each is held is in tables/, with its source, how
 * near it must be and why, and how far to trust it. A row that is not held, and a table without checks, fails.
 */
import { readdirSync, readFileSync } from "node:fs";
import { afterAll, describe, expect, test } from "vitest";
import type { Row } from "../engine/workshop/table.ts";
import { projectDir } from "../support/project.ts";
import type { Check, Table } from "./ledger.ts";
import { tables } from "./tables/index.ts";

const folder = `${projectDir}/tests/reference/trade`;

/** Rows that were held against something, by table. */
const held = new Map<Table, Set<Row>>(tables.map((table) => [table, new Set()]));

function hold({ of, found, expected, within, because, standing }: Check): void {
  const what = `${of} (${standing}): ${found} for ${expected}, ${because}`;
  expect(because, of).not.toBe("");
  if (typeof found === "string" || typeof expected === "string") {
    expect(found, what).toBe(expected);
  } else {
    expect(Number.isFinite(found) && Number.isFinite(expected) && within >= 0, what).toBe(true);
    expect(Math.abs(found - expected), what).toBeLessThanOrEqual(within);
  }
}

describe.each(tables.map((table) => [`${table.file}: ${table.source}`, table] as const))(
  "%s",
  (_name, table) => {
    test.each(table.rows.map((row) => [table.name(row), row] as const))("%s", (_row, row) => {
      const checks = table.checks(row);
      expect(checks.length, "checks of this row").toBeGreaterThan(0);
      for (const check of checks) hold(check);
      held.get(table)!.add(row);
    });
  },
);

test("every table of the folder is held, once", () => {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => /\.[ct]sv$/.test(file));
  expect(files.length).toBeGreaterThan(15);
  expect(tables.map(({ file }) => file).sort()).toEqual(files.sort());
});

/** Counted in the file, past the reader: blank lines, comments and the head line aside. Of the GHS list, lines with a code and words. */
test.each(tables.map((table) => [table.file, table] as const))(
  "%s: no line is left unread",
  (file, { rows }) => {
    const lines = readFileSync(`${folder}/${file}`, "utf8").split("\n");
    const isRow = file.endsWith(".tsv") ? /^[HP]\d{3}[^\t]*\t[^\t]/ : /^(?!# ).+/;
    const head = file.endsWith(".tsv") ? 0 : 1;
    expect(rows).toHaveLength(lines.filter((line) => isRow.test(line)).length - head);
  },
);

test.each(tables.filter(({ file }) => file.endsWith(".csv")).map(({ file }) => file))(
  "%s names its source and standing in its first line",
  (file) => {
    expect(readFileSync(`${folder}/${file}`, "utf8").split("\n")[0]).toMatch(
      /^# SOURCE: .*\b(published|by formula|from memory)\b/,
    );
  },
);

afterAll(() => {
  const skipped = tables.flatMap((table) =>
    table.rows.filter((row) => !held.get(table)!.has(row)).map((row) => `${table.file}: ${table.name(row)}`),
  );
  expect(skipped, "rows that were skipped or failed").toEqual([]);
});
