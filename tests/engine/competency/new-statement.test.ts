/** What a mentor is about to sign: put together from the record, and judged like anything that was signed. */
import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { assess } from "../../../src/engine/competency/assessed.ts";
import { checkRecord } from "../../../src/engine/competency/check-record.ts";
import { freshPlace } from "../../../src/engine/competency/fresh-place.ts";
import { newObservation, newSignOff } from "../../../src/engine/competency/new-statement.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import { situationOf } from "../../../src/engine/competency/situation.ts";
import {
  cardOf,
  mentorRow,
  observationAt,
  person,
  programmeWith,
  recordOf,
  releaseOf,
  rulesWith,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const [jo, ann] = [person("Jo"), person("Ann Mentor")];
const phases = ["strip", "build"].map((id) => ({ id, title: id }));
const motor = releaseOf("motor", { phases, rules: rulesWith({ watched: 0, unaided: 1, months: 24 }) });
const card = cardOf(motor);
const input = {
  rules: programmeWith([mentorRow(ann)]),
  releases: new Releases([card], [motor]),
  statuses: [withdrawalList(ann)],
  on: "2026-05-10",
};
const situation = situationOf(input);
const occasion = {
  issuer: ann.did,
  now: "2026-05-10T18:00:00.000Z",
  id: "urn:uuid:6f1b2c3d-4e5f-4a6b-8c7d-9e0f1a2b3c4d",
  statusIndex: 77,
};
const events = async () => [
  ...theoryAt("2026-05-01T18:00:00Z", jo, motor),
  await statementEvent(observationAt("2026-05-08T19:00:00Z", ann, jo, motor), ann),
];
const about = async () => {
  const record = recordOf(jo, await events());
  return { record, situation, assessed: assess(record, situation, nodePrimitives) };
};

describe("an observation", () => {
  const seen = { outcome: "unaided" as const, words: "Calm.", ticked: ["a"] };

  test("of every phase is one of the whole module", async () => {
    const { phases } = newObservation(occasion, await about(), card, { ...seen, phases: ["build", "strip"] });
    expect(phases).toEqual([]);
  });

  test("of one phase names it, and bears the names that the roster and the record show", async () => {
    const made = newObservation(occasion, await about(), card, { ...seen, phases: ["strip"] });
    expect(made).toMatchObject({
      phases: ["strip"],
      issuerName: "Ann Mentor",
      subjectName: "Jo",
      subject: jo.did,
    });
    expect(made).toMatchObject({
      module: "motor",
      revision: 1,
      content: motor.content,
      validUntil: undefined,
    });
  });
});

describe("a sign-off", () => {
  const granted = { level: "alone" as const, words: "", marked: undefined };

  test("rests on all that is right in the record, holds as long as the rules say, and stands up once signed", async () => {
    const made = newSignOff(occasion, await about(), card, granted);
    expect(made.evidence.map(({ name }) => name)).toEqual([
      "Quiz",
      "Practice order",
      "Done on paper",
      "Observation, unaided, by Ann Mentor, 2026-05-08",
    ]);
    expect(made.score).toBe(1);
    // 24 months after 10 May 2026: the end of 10 May 2028 in London, where summer time is an hour ahead of UTC.
    expect(made.validUntil).toBe("2028-05-10T23:00:00.000Z");
    const record = recordOf(jo, [...(await events()), await statementEvent(made, ann)]);
    expect(checkRecord(record, { ...input, primitives: nodePrimitives })).toEqual([]);
  });

  test("takes the score from whoever has marked it only where the record has none", async () => {
    const known = await about();
    const empty = recordOf(jo, []);
    const unknown = { ...known, record: empty, assessed: assess(empty, situation, nodePrimitives) };
    expect(newSignOff(occasion, known, card, { ...granted, marked: 0.5 }).score).toBe(1);
    expect(newSignOff(occasion, unknown, card, { ...granted, marked: 0.85 }).score).toBe(0.85);
  });
});

describe("a place on the list", () => {
  test("is drawn again where it was used", () => {
    const drawn = [5, 131_072 + 5, 2 * 131_072 + 9];
    expect(freshPlace(new Set([5]), () => drawn.shift()!)).toBe(9);
  });

  test("there is none once the list is full", () => {
    const all = new Set(Array.from({ length: 131_072 }, (_, place) => place));
    expect(() => freshPlace(all, () => 0)).toThrow(RangeError);
  });
});
