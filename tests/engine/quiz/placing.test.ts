/** Kinds in which each item of a list gets something, and places on a figure. Credits are worked out by hand. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import { questionProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { remarksOn, scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { placeAt, type Shape } from "../../../src/engine/quiz/shape.ts";
import { groups, pairs, places, quiz } from "./questions.ts";

const mark = (question: Question, given: unknown) =>
  scoreQuiz(quiz(1, question), new Map([[question.id, given]])).questions[0]!;
const score = (question: Question, given: unknown): number => mark(question, given).score;
const codes = (question: Question) => questionProblems(question).map(({ code, at }) => [code, ...at]);

describe("pairs", () => {
  const question = pairs("q", 4, 1);

  test.each([
    [[0, 1, 2, 3], 1],
    [["A", "b", " C ", "D"], 1],
    [[0, 1, 3, 2], 0.5],
    [[0, 1], 0.5],
    [[0, null, null, null], 0.25],
    [[0, 1, 2, 4], 0.75],
    [[0, 0, 0, 0], 0],
    // The first is its own, but given twice.
    [[0, 0, 2, 3], 0.5],
  ])("%j earns %d", (given, credit) => {
    expect(score(question, given)).toBe(credit);
  });

  test.each([
    [[null, null, null, null], false, undefined],
    [[0, 1, 2, 3, 4], false, "too-many"],
    [[0, "nothing of the kind"], false, "no-such-option"],
    [[0, 7], false, "no-such-option"],
    [[0, -1], false, "no-such-option"],
    [[0, {}], false, "wrong-kind"],
    ["A", false, "wrong-kind"],
    [{ 0: 0 }, false, "wrong-kind"],
  ])("%j is answered: %s, with %s", (given, answered, code) => {
    expect(mark(question, given)).toMatchObject({ answered, score: 0 });
    expect(mark(question, given).problem?.code).toBe(code);
  });

  test("one choice for all earns nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 8 }), fc.nat(8), (count, choice) => {
        expect(score(pairs("q", count, 1), Array(count).fill(Math.min(choice, count)))).toBe(0);
      }),
    );
  });

  test("each item is told, with the reason against what was chosen", () => {
    expect(remarksOn(question, [0, 2, null, 4])).toEqual([
      { verdict: "right", about: ["a", "A"], because: "because a" },
      { verdict: "wrong", about: ["b", "C", "B"], because: "because b" },
      { verdict: "missed", about: ["c", "C"], because: "because c" },
      { verdict: "wrong", about: ["d", "other 0", "D"], because: "no use for other 0" },
    ]);
  });

  test("mistakes of the author", () => {
    expect(codes(question)).toEqual([]);
    expect(codes(pairs("q", 2, 0))).toEqual([["too-few-pairs"]]);
    expect(codes({ ...question, choices: ["A", " a", "C", "D", "other 0"] })).toEqual([
      ["equal-choices", 0, 1],
    ]);
    expect(codes({ ...question, choices: ["A", "B", "C", "D", "d"] })).toEqual([["equal-others", 0]]);
    const twice = question.items.map((item) => ({ ...item, text: item.text === "b" ? "A" : item.text }));
    expect(codes({ ...question, items: twice })).toEqual([["equal-items", 0, 1]]);
  });
});

describe("items in groups", () => {
  // Three of group 0, two of group 1, one of group 2: all into the largest gets 3 of 6 right.
  const question = groups("q", "000112");

  test.each([
    [[0, 0, 0, 1, 1, 2], 1],
    [[0, 0, 0, 1, 1, 1], 2 / 3],
    [[0, 0, 0, 1], 1 / 3],
    [[0, 0, 0, 0, 0, 0], 0],
    [[1, 1, 1, 1, 1, 1], 0],
    [["group 0", "group 0", "Group  0", "group 1", "group 1", "group 2"], 1],
  ])("%j earns %d", (given, credit) => {
    expect(score(question, given)).toBeCloseTo(credit, 12);
  });

  test("all into one group earns nothing, whichever it is", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("0", "1", "2"), { maxLength: 8 }), fc.nat(2), (rest, group) => {
        const pattern = `0122${rest.join("")}`;
        expect(score(groups("q", pattern), Array(pattern.length).fill(group))).toBe(0);
      }),
    );
  });

  test("mistakes of the author", () => {
    expect(codes(question)).toEqual([]);
    expect(codes(groups("q", "0000"))).toEqual([["too-few-groups"]]);
    expect(codes(groups("q", "001"))).toEqual([["too-few-items"]]);
    expect(codes(groups("q", "0022"))).toEqual([["empty-group", 1]]);
  });
});

describe("a place on a figure", () => {
  const question = places("q", "wrwr");

  test.each([
    [1, 1],
    [3, 1],
    ["Option 1", 1],
    [0, 0],
    [4, 0],
    [[1], 0],
    [{ x: 50, y: 50 }, 0],
  ])("%j earns %d", (given, credit) => {
    expect(score(question, given)).toBe(credit);
  });

  test("whoever finds one of several right places has missed none", () => {
    expect(remarksOn(question, 1)).toEqual([{ verdict: "right", about: ["option 1"], because: "because 1" }]);
    expect(remarksOn(question, 0).map(({ verdict }) => verdict)).toEqual(["wrong", "missed", "missed"]);
  });

  const circle: Shape = { kind: "circle", x: 20, y: 20, r: 10 };
  const rectangle: Shape = { kind: "rectangle", x: 25, y: 10, width: 40, height: 20 };

  test.each([
    [{ x: 20, y: 30 }, 0],
    [{ x: 27.5, y: 27.5 }, undefined, [circle]],
    [{ x: 65, y: 30 }, 1],
    [{ x: 65.1, y: 30 }, undefined],
    // In both: the circle's middle is nearer.
    [{ x: 27, y: 20 }, 0],
    [{ x: Number.NaN, y: 0 }, undefined],
  ])("%j points at place %j", (spot, place, shapes: readonly Shape[] = [circle, rectangle]) => {
    expect(placeAt(shapes, spot)).toBe(place);
  });

  test("mistakes of the author", () => {
    expect(codes(question)).toEqual([]);
    expect(codes(places("q", "ww"))).toEqual([["no-right-place"]]);
    expect(codes(places("q", "rr"))).toEqual([["no-wrong-place"]]);
    const [first, second] = question.places as [(typeof question.places)[0], (typeof question.places)[0]];
    const at = (shape: Shape) => codes({ ...question, places: [first, { ...second, shape }] });
    expect(at({ kind: "circle", x: 95, y: 50, r: 6 })).toEqual([["place-outside", 1]]);
    expect(at({ kind: "rectangle", x: -1, y: 0, width: 5, height: 5 })).toEqual([["place-outside", 1]]);
    expect(at(first.shape)).toEqual([
      ["places-overlap", 0],
      ["places-overlap", 1],
    ]);
  });
});
