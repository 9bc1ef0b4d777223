import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseOne, chooseOneSetting } from "../../../src/engine/quiz/choose-one.ts";
import { chooseSeveral, chooseSeveralSetting } from "../../../src/engine/quiz/choose-several.ts";
import { ratio, toNumber } from "../../../src/engine/quiz/ratio.ts";
import { asked, one, options, several } from "./questions.ts";

describe("choose one", () => {
  const question = one("q", "wrw");

  test("the right option earns all, any other nothing", () => {
    expect([0, 1, 2].map((place) => toNumber(chooseOne.judge(question, place).credit))).toEqual([0, 1, 0]);
  });

  test.each<[unknown, unknown]>([
    [1, { state: "answered", answer: 1 }],
    ["option 1", { state: "answered", answer: 1 }],
    [" Option\n1 ", { state: "answered", answer: 1 }],
    [undefined, { state: "blank" }],
    [null, { state: "blank" }],
    ["", { state: "blank" }],
    [[], { state: "blank" }],
  ])("%j is read", (given, read) => {
    expect(chooseOne.read(question, given)).toEqual(read);
  });

  test.each<[unknown, string]>([
    [3, "no-such-option"],
    [-1, "no-such-option"],
    [0.5, "no-such-option"],
    ["1", "no-such-option"],
    ["length", "no-such-option"],
    [[1], "wrong-kind"],
    [{ option: 1 }, "wrong-kind"],
    [true, "wrong-kind"],
  ])("%j is not", (given, code) => {
    expect(chooseOne.read(question, given)).toMatchObject({ state: "unreadable", problem: { code } });
  });

  test("remarks name what was chosen, and what should have been", () => {
    expect(chooseOne.remarks(question, 2)).toEqual([
      { verdict: "missed", about: ["option 1"], because: "because 1" },
      { verdict: "wrong", about: ["option 2"], because: "because 2" },
    ]);
    expect(chooseOne.remarks(question, 1)).toEqual([
      { verdict: "right", about: ["option 1"], because: "because 1" },
    ]);
    expect(chooseOne.remarks(question, undefined).map(({ verdict }) => verdict)).toEqual(["missed"]);
  });
});

const ticks = fc.tuple(
  fc.array(fc.constantFrom("r", "w"), { minLength: 1, maxLength: 8 }),
  fc.array(fc.nat(7)),
);

describe("choose several", () => {
  const question = several("q", "rrrww");

  test.each<[readonly number[], number, number]>([
    [[0, 1, 2], 1, 1],
    [[0, 1], 2, 3],
    [[0, 1, 2, 3], 1, 2],
    [[0, 1, 3], 1, 6],
    [[0, 3], 0, 1],
    [[3, 4], 0, 1],
    [[0, 1, 2, 3, 4], 0, 1],
  ])("%j earns %d/%d", (answer, top, bottom) => {
    // By hand: part of the right ones ticked less part of the wrong ones ticked, no less than 0.
    expect(chooseSeveral.judge(question, answer).credit).toEqual(ratio(top, bottom));
  });

  test("sensitivity + specificity − 1 of Youden, no less than 0", () => {
    fc.assert(
      fc.property(ticks, ([letters, ticked]) => {
        const places = [...new Set(ticked.filter((place) => place < letters.length))];
        fc.pre(letters.includes("r") && letters.includes("w"));
        const rate = (letter: string, chosen: boolean): number => {
          const all = [...letters.keys()].filter((place) => letters[place] === letter);
          return all.filter((place) => places.includes(place) === chosen).length / all.length;
        };
        const { credit } = chooseSeveral.judge(several("q", letters.join("")), places);
        // Two divisions and two sums in floating point.
        expect(toNumber(credit)).toBeCloseTo(Math.max(0, rate("r", true) + rate("w", false) - 1), 12);
      }),
    );
  });

  test("ticking everything earns nothing where one option is wrong", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("r", "w"), { maxLength: 8 }), (letters) => {
        const all = several("q", `${letters.join("")}w`);
        expect(chooseSeveral.judge(all, [...all.options.keys()]).credit).toEqual(ratio(0, 1));
      }),
    );
  });

  test("where all are right, the part that is ticked", () => {
    expect(chooseSeveral.judge(several("q", "rrrr"), [2]).credit).toEqual(ratio(1, 4));
  });

  test("an answer is a list of places or texts, in any order, each counted once", () => {
    expect(chooseSeveral.read(question, ["option 2", 0, 2, 0])).toEqual({
      state: "answered",
      answer: [0, 2],
    });
    expect(chooseSeveral.read(question, [])).toEqual({ state: "blank" });
    expect(chooseSeveral.read(question, 0)).toMatchObject({ problem: { code: "wrong-kind" } });
    expect(chooseSeveral.read(question, [0, null])).toMatchObject({ problem: { code: "wrong-kind" } });
    expect(chooseSeveral.read(question, [0, 5])).toMatchObject({ problem: { code: "no-such-option" } });
    expect(chooseSeveral.read(question, Array(501).fill(0))).toMatchObject({ problem: { code: "too-many" } });
  });

  test("remarks leave out what was rightly left", () => {
    expect(chooseSeveral.remarks(question, [0, 3])).toEqual([
      { verdict: "right", about: ["option 0"], because: "because 0" },
      { verdict: "missed", about: ["option 1"], because: "because 1" },
      { verdict: "missed", about: ["option 2"], because: "because 2" },
      { verdict: "wrong", about: ["option 3"], because: "because 3" },
    ]);
  });
});

describe("mistakes of the author", () => {
  const codes = (question: ReturnType<typeof one>) =>
    chooseOneSetting.problems(question).map(({ code, at }) => [code, ...at]);
  const codesOfSeveral = (pattern: string) =>
    chooseSeveralSetting.problems(several("q", pattern)).map(({ code }) => code);

  test("none in a sound question", () => {
    expect(codes(one("q", "wrw"))).toEqual([]);
    expect(codesOfSeveral("rrw")).toEqual([]);
  });

  test("what is right", () => {
    expect(codes(one("q", "ww"))).toEqual([["no-right-option"]]);
    expect(codes(one("q", "rwr"))).toEqual([["several-right-options", 0, 2]]);
    expect(codes(one("q", "r"))).toEqual([["too-few-options"]]);
    expect(codes(one("q", ""))).toEqual([["no-right-option"], ["too-few-options"]]);
    expect(codesOfSeveral("ww")).toEqual(["no-right-option"]);
    expect(codesOfSeveral("rr")).toEqual(["no-wrong-option"]);
  });

  test("two equal options, case and space aside", () => {
    const texts = ["Let it down", "wind it", "let  it\tDOWN ", "Wind it"];
    const twins = options("rwww").map((each, place) => ({ ...each, text: texts[place]! }));
    const question = { ...asked("q"), kind: "choose-one" as const, options: twins };
    expect(codes(question)).toEqual([
      ["equal-options", 0, 2],
      ["equal-options", 1, 3],
    ]);
  });

  test("a wrong option without its reason", () => {
    const bare = options("rw").map((each) => ({ ...each, why: " " }));
    expect(codes({ ...asked("q"), kind: "choose-one", options: bare })).toEqual([
      ["wrong-option-without-why", 1],
    ]);
  });
});
