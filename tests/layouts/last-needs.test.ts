import { expect, test } from "vitest";
import { lastNeedsAmong } from "../../layouts/components/last-needs.ts";
import type { ModuleCard } from "../../src/model/site.ts";

/** By hand: what a need of a module needs itself is not named again. */
const cards = new Map(
  Object.entries({
    screws: [],
    solvents: [],
    cleaning: ["screws", "solvents"],
    springs: ["screws"],
    motor: ["screws", "solvents", "cleaning", "springs"],
    lost: ["nowhere", "screws"],
  }).map(([id, needs]) => [id, { id, needs } as unknown as ModuleCard]),
);
const last = lastNeedsAmong(cards);

test.each([
  ["screws", []],
  ["cleaning", ["screws", "solvents"]],
  ["motor", ["cleaning", "springs"]],
  ["lost", ["nowhere", "screws"]],
])("of what %s needs, %j is learned last", (id, expected) => {
  expect(last(cards.get(id)!)).toEqual(expected);
});
