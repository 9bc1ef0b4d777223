/** What a mentor is told before they sign. */
import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { assess } from "../../../src/engine/competency/assessed.ts";
import { beforeSigning, mayBeSigned } from "../../../src/engine/competency/before-signing.ts";
import type { RecordEvent } from "../../../src/engine/competency/event.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import type { Mentor } from "../../../src/engine/competency/rules.ts";
import type { Observation, SignOff } from "../../../src/engine/competency/sign-off.ts";
import { situationOf } from "../../../src/engine/competency/situation.ts";
import { statesIn } from "../../../src/engine/competency/standing.ts";
import {
  cardOf,
  mentorRow,
  observationAt,
  person,
  programmeWith,
  recordOf,
  releaseOf,
  signOffAt,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const [jo, ann] = [person("Jo"), person("Ann Mentor")];
const motor = releaseOf("motor");
const theory = theoryAt("2026-05-01T18:00:00Z", jo, motor);
const observed = async () => [
  await statementEvent(observationAt("2026-05-08T19:00:00Z", ann, jo, motor), ann),
  await statementEvent(observationAt("2026-05-09T19:00:00Z", ann, jo, motor), ann),
];

function told(draft: SignOff | Observation, events: readonly RecordEvent[], more: Partial<Mentor> = {}) {
  const situation = situationOf({
    rules: programmeWith([mentorRow(ann, more)]),
    releases: new Releases([cardOf(motor)], [motor]),
    statuses: [withdrawalList(ann)],
    on: "2026-05-10",
  });
  const assessed = assess(recordOf(jo, events), situation, nodePrimitives);
  const before = beforeSigning(draft, { assessed, situation, states: statesIn(assessed, situation) });
  const { refusals, missing } = before;
  const codes = refusals.map(({ code }) => code);
  return { codes, missing: missing.map(({ kind }) => kind), may: mayBeSigned(before) };
}

const signOff = (more: Partial<SignOff> = {}) => signOffAt("2026-05-10T19:00:00Z", ann, jo, motor, more);

describe("a sign-off", () => {
  test("of whom nothing is missing may be signed", async () => {
    expect(told(signOff(), [...theory, ...(await observed())])).toEqual({
      codes: [],
      missing: [],
      may: true,
    });
  });

  test("may not, where something is missing", async () => {
    const all = [...theory, ...(await observed())];
    const unread = all.filter(({ kind }) => kind !== "read");
    expect(told(signOff(), unread)).toEqual({ codes: [], missing: ["reading"], may: false });
    expect(told(signOff(), theory)).toEqual({ codes: ["evidence"], missing: [], may: false });
    expect(told(signOff({ level: "under eye" }), theory)).toEqual({ codes: [], missing: [], may: true });
    expect(told(signOff({ level: "under eye" }), [])).toMatchObject({
      missing: ["reading", "quiz", "practice"],
    });
  });

  test("may not be made by a mentor for themself, nor beyond what they may sign", async () => {
    const all = [...theory, ...(await observed())];
    expect(told(signOff(), all, { ownRecords: [jo.did] }).codes).toEqual(["self-signed"]);
    expect(told(signOff({ level: "may teach" }), all, { highestLevel: "alone" }).codes).toEqual([
      "not-allowed",
    ]);
  });

  test("a second time on the strength of the same observations may not be made on a later day", async () => {
    const first = await statementEvent(signOffAt("2026-05-09T21:00:00Z", ann, jo, motor), ann);
    const all = [...theory, ...(await observed()), first];
    expect(told(signOff(), all).codes).toEqual(["evidence"]);
    expect(told(signOff({ level: "may teach" }), all)).toEqual({ codes: [], missing: [], may: true });
  });
});

test("an observation needs a mentor who may sign the module, and no more", () => {
  const draft = observationAt("2026-05-10T19:00:00Z", ann, jo, motor);
  expect(told(draft, [])).toEqual({ codes: [], missing: [], may: true });
  expect(told(draft, [], { maySign: ["governor"] }).codes).toEqual(["not-allowed"]);
});
