/** Laws of standing, over random parts of one person's events: order makes no difference, and evidence never does harm. */
import * as fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { addDays } from "../../../src/engine/competency/calendar.ts";
import type { RecordEvent } from "../../../src/engine/competency/event.ts";
import { mergeRecords } from "../../../src/engine/competency/merge.ts";
import type { CompetencyRecord } from "../../../src/engine/competency/record.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import { stateOf } from "../../../src/engine/competency/standing.ts";
import type { Missing, Standing } from "../../../src/engine/competency/state.ts";
import {
  cardOf,
  mentorRow,
  observationAt,
  person,
  practiceAt,
  programmeWith,
  recordOf,
  releaseOf,
  rulesWith,
  signOffAt,
  sittingAt,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const [jo, ann, ben] = [person("Jo"), person("Ann Mentor"), person("Ben Mentor")];
const motor = releaseOf("motor", { rules: rulesWith({ months: 12 }) });
const governor = releaseOf("governor", { needs: ["motor"] });
const releases = new Releases([cardOf(governor), cardOf(motor)], [motor, governor]);

/** Each run checks a dozen signatures. */
const runs = { numRuns: 40 };

let pool: RecordEvent[];
/** Those that can only add: no stop for safety among them. */
let adding: RecordEvent[];

beforeAll(async () => {
  const at = (day: number) => `2026-05-${String(day).padStart(2, "0")}T19:00:00Z`;
  adding = [
    ...theoryAt(at(1), jo, motor),
    ...theoryAt(at(2), jo, governor),
    sittingAt(at(3), jo, motor, { first: 0, second: 1 }, { attempt: 2 }),
    practiceAt(at(1), motor, ["c", "b", "a"]),
    await statementEvent(observationAt(at(4), ann, jo, motor, { outcome: "watched" }), ann),
    await statementEvent(observationAt(at(5), ben, jo, motor), ben),
    await statementEvent(observationAt(at(6), ann, jo, motor, { outcome: "not yet" }), ann),
    await statementEvent(signOffAt(at(7), ann, jo, motor), ann),
    await statementEvent(observationAt(at(8), ann, jo, governor), ann),
    await statementEvent(observationAt(at(9), ann, jo, governor), ann),
    await statementEvent(signOffAt(at(10), ann, jo, governor), ann),
  ];
  const stop = observationAt(at(6), ben, jo, motor, { outcome: "stopped for safety" });
  pool = [...adding, await statementEvent(stop, ben)];
});

const stateAt = (record: CompetencyRecord, on = "2026-06-30") =>
  stateOf({
    record,
    releases,
    rules: programmeWith([mentorRow(ann), mentorRow(ben)]),
    statuses: [withdrawalList(ann), withdrawalList(ben)],
    on,
    primitives: nodePrimitives,
  });

/** Some of 18 events, by their places, in a random order. */
const places = fc.shuffledSubarray(Array.from({ length: 18 }, (_, place) => place));
const some = (from: readonly RecordEvent[], at: readonly number[]) =>
  at.flatMap((place) => from[place] ?? []);
const recordWith = (list: readonly RecordEvent[]): CompetencyRecord => ({
  ...recordOf(jo, []),
  events: list,
});

test("the pool is as large as the places", () => {
  expect(pool).toHaveLength(18);
});

describe("standing", () => {
  test("does not depend on the order of events", () => {
    fc.assert(
      fc.property(places, (at) => {
        const list = some(pool, at);
        expect(stateAt(recordWith(list))).toEqual(stateAt(recordOf(jo, list)));
      }),
      runs,
    );
  });

  test("is the same of the same, whatever was asked before", () => {
    const record = recordOf(jo, pool);
    const first = stateAt(record);
    stateAt(record, "2026-05-06");
    expect(stateAt(record)).toEqual(first);
    expect(record).toEqual(recordOf(jo, pool));
  });

  test("of two merged copies is that of all their events", () => {
    fc.assert(
      fc.property(places, places, (one, other) => {
        const merged = mergeRecords(recordOf(jo, some(pool, one)), recordOf(jo, some(pool, other)));
        const all = [...new Set([...one, ...other])];
        expect(stateAt(merged)).toEqual(stateAt(recordOf(jo, some(pool, all))));
      }),
      runs,
    );
  });

  test("on a date is that of the events up to its end", () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 0, max: 15 }), (at, days) => {
        const on = addDays("2026-04-30", days);
        const list = some(pool, at);
        const known = list.filter((event) => event.at.slice(0, 10) <= on);
        expect(stateAt(recordOf(jo, list), on)).toEqual(stateAt(recordOf(jo, known), on));
      }),
      runs,
    );
  });

  test("never falls by what a trainee or a mentor adds, but for a stop for safety", () => {
    fc.assert(
      fc.property(places, places, (before, more) => {
        const less = stateAt(recordOf(jo, some(adding, before)));
        const all = stateAt(recordOf(jo, some(adding, [...new Set([...before, ...more])])));
        for (const [module, state] of all) {
          expect(height(state.standing)).toBeGreaterThanOrEqual(height(less.get(module)!.standing));
          if (state.standing === less.get(module)!.standing)
            expectNoMore(state.missing, less.get(module)!.missing);
        }
      }),
      runs,
    );
  });
});

/** "suspended" bears a sign-off, and is above the way to it. */
const heights: readonly Standing[] = [
  "not begun",
  "under way",
  "ready to be watched",
  "ready to be signed",
  "suspended",
  "signed off",
];
const height = (standing: Standing): number => heights.indexOf(standing);

function expectNoMore(now: readonly Missing[], before: readonly Missing[]): void {
  const known = new Set(before.map(({ kind }) => kind));
  for (const { kind } of now) expect(known).toContain(kind);
}
