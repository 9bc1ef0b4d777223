/** What trainees' events come to when they are marked again, and which of them do not add up. */
import { describe, expect, test } from "vitest";
import type { QuizEvent, RecordEvent } from "../../../src/engine/competency/event.ts";
import { paperSeed } from "../../../src/engine/competency/events.ts";
import { type EvidenceEvent, rescore } from "../../../src/engine/competency/evidence.ts";
import { portable } from "../../../src/engine/competency/libraries.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import { nextSitting, pickedPapers } from "../../../src/engine/competency/sittings.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import {
  cardOf,
  eventAt,
  person,
  practiceAt,
  releaseOf,
  runAt,
  sittingAt,
  smallQuiz,
} from "../../support/competency.ts";

const jo = person("Jo");
const motor = releaseOf("motor");
const releases = new Releases([cardOf(motor)], [motor]);
const at = "2026-05-01T18:00:00Z";

const marked = (event: RecordEvent, kept = releases, keys = [jo.did]) =>
  rescore(event as EvidenceEvent, { releases: kept, keys: new Set(keys), primitives: portable });
const faultOf = (event: RecordEvent, kept = releases) => {
  const result = marked(event, kept);
  return result.ok ? undefined : result.problem;
};

const half = { first: 1, second: 0 };
const sitting = sittingAt(at, jo, motor, half) as QuizEvent;
/** The same with another claim or answer, and an id that fits. */
const altered = ({ id: _, at: when, ...event }: RecordEvent, more: object): RecordEvent =>
  eventAt(when, { ...event, ...more } as Parameters<typeof eventAt>[1]);

describe("a sitting", () => {
  test("is marked by the quiz that it was given", () => {
    expect(marked(sitting)).toEqual({
      ok: true,
      verdict: { kind: "quiz", score: 1, max: 2, fraction: 0.5, passed: false, supervised: false },
    });
  });

  test.each([
    ["claims more points", { claimed: { score: 2, max: 2, passed: true } }],
    ["claims to have passed", { claimed: { score: 1, max: 2, passed: true } }],
    ["claims other points to be had", { claimed: { score: 1, max: 1, passed: false } }],
  ])("that %s does not add up", (_, more) => {
    expect(faultOf(altered(sitting, more))).toMatchObject({ code: "evidence" });
    expect(faultOf(altered(sitting, more))?.message).toContain(
      "marked again it comes to 1 of 2 points, not passed",
    );
  });

  test("whose paper was drawn by a seed of one's own choice, or is another person's, does not count", () => {
    const own = sittingAt(at, jo, motor, half, { seed: "my favourite" });
    const theirs = sittingAt(at, person("Sam"), motor, half);
    for (const event of [own, theirs]) expect(faultOf(event)?.message).toContain("was not drawn by the seed");
    expect(marked(theirs, releases, [jo.did, person("Sam").did]).ok).toBe(true);
  });

  test("of a quiz that was not kept, of another revision or another module, can't be marked", () => {
    const other = releaseOf("motor", { revision: 2 });
    for (const event of [
      sittingAt(at, jo, other),
      altered(sitting, { revision: 2 }),
      altered(sitting, { module: "governor" }),
      altered(sitting, { module: "__proto__" }),
    ])
      expect(faultOf(event)?.message).toContain("keeps no quiz like this");
  });

  test("of a release whose content the programme does not accept can't be marked", () => {
    const stray = releaseOf("motor", { content: releaseOf("stray").content });
    expect(faultOf(sitting, new Releases([cardOf(motor)], [stray]))).toMatchObject({ code: "evidence" });
  });

  test("with answers that no question can read earns nothing and does no harm", () => {
    const odd = { first: { deep: [null] }, second: 1e9, third: "?", __proto__: 1 };
    expect(marked(sittingAt(at, jo, motor, odd))).toMatchObject({
      ok: true,
      verdict: { score: 0, passed: false },
    });
  });

  test("under a mentor's eye bears the mentor's number; without the key it waits", () => {
    const supervised = { ...motor.quiz!, supervised: true };
    const hidden = { ...motor, quiz: { ...supervised, quiz: undefined } };
    const event = sittingAt(at, jo, { ...motor, quiz: supervised }, { first: 1 }, { seed: "4711" });
    expect(marked(event, new Releases([cardOf(hidden)], [hidden]))).toEqual({
      ok: true,
      verdict: { kind: "handed in" },
    });
    const whole = { ...motor, quiz: supervised };
    expect(marked(event, new Releases([cardOf(whole)], [whole]))).toMatchObject({
      ok: true,
      verdict: { kind: "quiz", score: 1, supervised: true },
    });
  });
});

describe("a practice", () => {
  test.each([
    [["a", "b", "c"], true],
    [["b", "a", "c"], false],
    [["a", "b"], false],
    [["a", "b", "c", "stray"], false],
    [[], false],
  ])("%j: %s", (given, right) => {
    expect(marked(practiceAt(at, motor, given))).toEqual({
      ok: true,
      verdict: { kind: "practice", practice: "order", right },
    });
  });

  test("that claims to be right and is not, or names a step twice, does not add up", () => {
    expect(
      faultOf(altered(practiceAt(at, motor, ["b", "a", "c"]), { claimed: { right: true } })),
    ).toMatchObject({
      code: "evidence",
    });
    const twice = altered(practiceAt(at, motor), { given: ["a", "a", "b", "c"] });
    expect(faultOf(twice)).toMatchObject({ code: "evidence" });
  });

  test("under the name of another practice can't be looked at", () => {
    expect(faultOf(altered(practiceAt(at, motor), { practice: "other" }))?.message).toContain(
      "keeps no practice",
    );
  });
});

describe("a run on paper", () => {
  test("is gone through again, with its stops", () => {
    expect(marked(runAt(at, motor))).toEqual({ ok: true, verdict: { kind: "run", done: true, stops: 0 } });
    const stopped = runAt(at, motor, ["b", "a"], { done: false, stops: 1 });
    expect(marked(stopped)).toEqual({ ok: true, verdict: { kind: "run", done: false, stops: 1 } });
  });

  test.each([
    ["hides a stop", ["b", "a", "b", "c"], { done: true, stops: 0 }],
    ["claims to be finished", ["a", "b"], { done: true, stops: 0 }],
    ["tries a step that there is not", ["a", "b", "x"], { done: false, stops: 0 }],
    ["does a step twice", ["a", "a"], { done: false, stops: 0 }],
  ])("that %s does not add up", (_, tried, claimed) => {
    expect(faultOf(runAt(at, motor, tried, claimed))).toMatchObject({ code: "evidence" });
  });
});

describe("sittings one after another", () => {
  const pool: Quiz = {
    ...smallQuiz,
    paper: { kind: "count", count: 1 },
  };
  const drawn = { ...motor, quiz: { ...motor.quiz!, quiz: pool } };
  const kept = new Releases([cardOf(drawn)], [drawn]);
  const of = { digest: drawn.quiz.digest, quiz: pool };
  const seedOf = (attempt: number) => paperSeed(jo.did, of.digest, attempt, portable);
  const sat = (attempt: number, answer: number, preferred: readonly string[] = []) =>
    sittingAt(
      `2026-05-0${attempt}T18:00:00Z`,
      jo,
      drawn,
      { first: answer, second: answer },
      { attempt, preferred },
    );

  test("the first asks by lot, the next first for what is not known to be right", () => {
    expect(nextSitting([], { ...of, seedOf })).toEqual({ attempt: 1, seed: seedOf(1), preferred: [] });
    const wrong = nextSitting([sat(1, 0)], { ...of, seedOf });
    expect(wrong).toEqual({ attempt: 2, seed: seedOf(2), preferred: ["first", "second"] });
    const right = nextSitting([sat(1, 1)], { ...of, seedOf });
    expect(right.preferred).toHaveLength(1);
    const both = [sat(1, 1), sat(2, 1, right.preferred)];
    expect(nextSitting(both, { ...of, seedOf }).preferred).toEqual([]);
    expect(pickedPapers(both, kept)).toEqual(new Map());
  });

  test("a later one without those before it may have been picked", () => {
    const picked = sat(3, 1);
    expect([...pickedPapers([sat(1, 0), picked], kept)]).toEqual([
      [picked.id, expect.objectContaining({ code: "evidence" })],
    ]);
  });

  test("so may one that asks again for what was right, and a first that prefers anything", () => {
    const right = nextSitting([sat(1, 1)], { ...of, seedOf }).preferred;
    const known = ["first", "second"].filter((id) => !right.includes(id));
    const again = sat(2, 1, known);
    expect([...pickedPapers([sat(1, 1), again], kept).keys()]).toEqual([again.id]);
    const first = sat(1, 1, ["first"]);
    expect([...pickedPapers([first], kept).keys()]).toEqual([first.id]);
  });

  test("two devices may sit the same number; what they prefer is let pass from there on", () => {
    const one = sat(1, 1);
    const other = sittingAt("2026-05-01T19:00:00Z", jo, drawn, { first: 0, second: 0 });
    expect(pickedPapers([one, other, sat(2, 1, ["first", "second"])], kept)).toEqual(new Map());
  });
});
