/** Laws of merging, over random copies of a record. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { RecordEvent } from "../../../src/engine/competency/event.ts";
import { mergeRecords, underKey } from "../../../src/engine/competency/merge.ts";
import type { CompetencyRecord } from "../../../src/engine/competency/record.ts";
import { eventAt, person, recordOf } from "../../support/competency.ts";

const jo = person("Jo");

/** Few times and few hazards, so that copies share events. */
const events: fc.Arbitrary<RecordEvent> = fc
  .tuple(fc.integer({ min: 0, max: 5 }), fc.constantFrom("spring", "solvent", "__proto__", "constructor"))
  .map(([minute, hazard]) => eventAt(`2026-05-01T18:0${minute}:00Z`, { kind: "hazard", hazard }));

const copies: fc.Arbitrary<CompetencyRecord> = fc
  .record({
    list: fc.array(events, { maxLength: 8 }),
    name: fc.constantFrom("Jo", "Joanna", "J."),
    day: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ list, name, day }) => ({ ...recordOf(jo, list), name, named: `2026-01-0${day}T00:00:00.000Z` }));

describe("merging", () => {
  test("is idempotent, commutative and associative", () => {
    fc.assert(
      fc.property(copies, copies, copies, (a, b, c) => {
        expect(mergeRecords(a, a)).toEqual(a);
        expect(mergeRecords(a, b)).toEqual(mergeRecords(b, a));
        expect(mergeRecords(mergeRecords(a, b), c)).toEqual(mergeRecords(a, mergeRecords(b, c)));
      }),
    );
  });

  test("loses no event, adds none, and keeps them by time, each once", () => {
    fc.assert(
      fc.property(copies, copies, (a, b) => {
        const { events: merged } = mergeRecords(a, b);
        const ids = merged.map(({ id }) => id);
        expect(new Set(ids)).toEqual(new Set([...a.events, ...b.events].map(({ id }) => id)));
        expect(ids).toHaveLength(new Set(ids).size);
        expect(merged.map(({ at }) => at)).toEqual(merged.map(({ at }) => at).toSorted());
      }),
    );
  });

  test("the name chosen later holds", () => {
    const [old, now] = ["2026-01-01T00:00:00.000Z", "2026-02-01T00:00:00.000Z"];
    const a = { ...recordOf(jo, []), name: "Zoe", named: old };
    const b = { ...recordOf(jo, []), name: "Ann", named: now };
    expect(mergeRecords(a, b)).toMatchObject({ name: "Ann", named: now });
  });

  test("of two people's records is refused, until one is carried on under the other's key", () => {
    const other = person("Jo, new phone");
    const [a, b] = [recordOf(jo, []), recordOf(other, [])];
    expect(() => mergeRecords(a, b)).toThrow(RangeError);
    expect(mergeRecords(underKey(a, other.did), b).owner).toBe(other.did);
  });
});
