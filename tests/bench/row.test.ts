import { expect, test } from "vitest";
import { hasBudget, isWithin, median, quantile, tableOf } from "./row.ts";

test("quantiles by nearest rank", () => {
  expect(median([3, 1, 2])).toBe(2);
  expect(quantile([5, 1, 4, 2, 3], 0.95)).toBe(5);
  expect(quantile([7], 0.95)).toBe(7);
});

test("what is over its budget is a miss, and what has none is only told", () => {
  const rows = [
    { what: "order answer", measured: 16, unit: "ms", budget: 16 },
    { what: "page", measured: 14.1, unit: "KiB", budget: 14 },
    { what: "memory", measured: 900, unit: "MiB" },
    { what: "slow", measured: 299_999, unit: "a second", atLeast: 300_000 },
    { what: "quick", measured: 300_000, unit: "a second", atLeast: 300_000 },
  ];
  expect(rows.map(isWithin)).toEqual([true, false, true, false, true]);
  expect(rows.map(hasBudget)).toEqual([true, true, false, true, true]);
  const lines = tableOf(rows).split("\n");
  expect(lines[1]).toMatch(/16 ms +≤ 16 ms +pass$/);
  expect(lines[2]).toMatch(/14\.1 KiB +≤ 14 KiB +MISS$/);
  expect(lines[3]).toMatch(/900 MiB$/);
  expect(lines[4]).toMatch(/299,999 a second +≥ 300,000 a second +MISS$/);
  expect(lines[5]).toMatch(/300,000 a second +≥ 300,000 a second +pass$/);
});
