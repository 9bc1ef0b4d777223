import { describe, expect, test } from "vitest";
import { remarkLines, verdictWords } from "../../src/browser/quiz/feedback-words.ts";
import { fingerprint } from "../../src/browser/quiz/fingerprint.ts";
import { openWords } from "../../src/browser/quiz/open-words.ts";
import { resultWords } from "../../src/browser/quiz/result-words.ts";
import { sitAgainAt, whenWords } from "../../src/browser/quiz/sit-again.ts";
import { keepSitting, newSitting, readSitting } from "../../src/browser/quiz/sitting.ts";
import type { Question } from "../../src/engine/quiz/kinds.ts";
import { remarksOn, scoreQuiz } from "../../src/engine/quiz/score.ts";

const asked = { ask: "?", why: "Because.", see: "#a", objective: undefined, critical: false, points: 1 };
const option = (text: string, right: boolean, why?: string) => ({ text, right, why });
const one: Question = {
  ...asked,
  id: "one",
  kind: "choose-one",
  options: [option("It runs away.", true), option("It is lighter", false, "the weight is the same")],
};
const several: Question = {
  ...asked,
  id: "several",
  kind: "choose-several",
  options: [option("oil", true), option("wax", true), option("water", false, "it rusts")],
};

describe("a sitting that was kept", () => {
  const sitting = {
    ...newSitting({ number: 3, seed: "seed", preferred: ["several"] }, [
      { asked: ["one", "several"], missed: ["several"] },
    ]),
    ended: 1_800_000_000_000,
    answers: new Map<string, unknown>([
      ["__proto__", [1]],
      ["one", 0],
    ]),
    checked: new Set(["one"]),
  };
  const kept = JSON.parse(JSON.stringify(keepSitting(sitting, "print")));

  test("is read again", () => {
    expect(readSitting(kept, "print")).toEqual(sitting);
  });

  test("is not taken up by a quiz that has changed", () => {
    expect(readSitting(kept, "other")).toBeUndefined();
  });

  test.each([
    [undefined],
    [null],
    [7],
    [[]],
    [{}],
    [{ ...kept, answers: { one: 0 } }],
    [{ ...kept, answers: [[1, 2]] }],
    [{ ...kept, seed: 4 }],
    [{ ...kept, checked: "one" }],
    [{ ...kept, preferred: [1] }],
    [{ ...kept, preferred: undefined }],
    [{ ...kept, earlier: [{ asked: ["one"] }] }],
    [{ ...kept, earlier: {} }],
  ])("%j is none", (bad) => {
    expect(readSitting(bad, "print")).toBeUndefined();
  });
});

test("a fingerprint tells texts apart that differ in one letter or in order", () => {
  const texts = ["", "a", "b", "ab", "ba", "abc", "abd", "\u0161", "\u0061\u0061"];
  expect(new Set(texts.map(fingerprint)).size).toBe(texts.length);
});

describe("what is said about an answer", () => {
  const lines = (question: Question, answer: unknown) => {
    const { right } = scoreQuiz({ pass: 1, questions: [question] }, new Map([[question.id, answer]]))
      .questions[0]!;
    return remarkLines(question.kind, remarksOn(question, answer), right).map(({ text }) => text);
  };

  test("nothing that says no more than that it is right", () => {
    expect(lines(one, 0)).toEqual([]);
  });

  test("what was chosen wrongly and why, and what was right", () => {
    expect(lines(one, 1).sort()).toEqual([
      "Not right: “It is lighter”. The weight is the same.",
      "Right, and not chosen: “It runs away.”",
    ]);
    expect(lines(several, [0, 2])).toContain("Not right: “water”. It rusts.");
    expect(lines(several, [0, 2])).toContain("Right, and not chosen: “wax”.");
  });
});

describe("when one may sit again", () => {
  const ended = Date.UTC(2026, 10, 25, 20);
  const hour = 3_600_000;

  test("after the wait of the programme, where the sitting was not passed", () => {
    expect(sitAgainAt(ended, false, 720, ended + hour)).toBe(ended + 12 * hour);
    expect(sitAgainAt(ended, false, 720, ended + 12 * hour)).toBeUndefined();
    expect(sitAgainAt(ended, true, 720, ended + hour)).toBeUndefined();
    expect(sitAgainAt(ended, false, 0, ended)).toBeUndefined();
    expect(sitAgainAt(undefined, false, 720, ended)).toBeUndefined();
  });

  test("in words with day and time", () => {
    expect(whenWords(new Date(2026, 10, 26, 8, 5).getTime(), "en-GB")).toMatch(
      /Thursday.*26 November.*08:05/,
    );
  });
});

describe("what is said of a number", () => {
  const screws: Question = {
    ...asked,
    id: "screws",
    kind: "number",
    answer: { amount: 3, unit: "", dimension: "number", base: 3 },
    tolerance: undefined,
  };
  const said = (given: unknown) => {
    const quiz = { pass: 0.8, paper: undefined, supervised: false, questions: [screws] };
    const [mark] = scoreQuiz(quiz, new Map([["screws", given]])).questions;
    const lines = remarkLines("number", remarksOn(screws, given), mark!.right).map(({ text }) => text);
    return { mark: mark!, verdict: verdictWords(mark!), lines };
  };

  test("right is said once", () => {
    expect(said("3")).toMatchObject({ verdict: "Right.", lines: [] });
    expect(said("4")).toMatchObject({ verdict: "Not right.", lines: ["4: too high. The answer is 3."] });
  });

  test("one that can't be read is not one without an answer", () => {
    const [blank, word] = [said(undefined).mark, said("three").mark];
    expect(said("three").verdict).toBe("Not to be read.");
    expect(
      openWords(
        [
          { number: 1, mark: blank },
          { number: 2, mark: word },
        ],
        "Check my answers",
      ),
    ).toBe(
      "Without an answer: 1 question (1). The answer to question 2, “three”, can't be read; write the number alone, in figures, without a word or a unit. Complete your answers, or press “Check my answers” once more.",
    );
    expect(openWords([{ number: 2, mark: word }], "Check my answers")).not.toContain("Without an answer");
  });
});

describe("what is said of pairs and of words", () => {
  const words = (question: Question, answer: unknown) =>
    remarkLines(question.kind, remarksOn(question, answer), false).map(({ text }) => text);
  const pair: Question = {
    ...asked,
    id: "pair",
    kind: "match",
    items: [
      { text: "pivot", choice: 0, why: "it turns fast" },
      { text: "tooth", choice: 1, why: undefined },
    ],
    choices: ["oil", "grease", "wax"],
    whyNot: ["it chips"],
  };
  const word: Question = {
    ...asked,
    id: "word",
    kind: "text",
    answers: ["click"],
    slips: 1,
    mistakes: [{ text: "clock", why: "another machine" }],
  };

  test("each item, with what it was given and what belongs to it", () => {
    expect(words(pair, [0, 2])).toEqual([
      "“pivot”: oil. It turns fast.",
      "“tooth”: not “wax”, but “grease”. It chips.",
    ]);
    expect(words(pair, [null, 1])[0]).toBe("“pivot”: nothing given; it is “oil”. It turns fast.");
    expect(words(pair, "oil")[0]).toBe("“a string” can't be read: expected a list of 2 entries.");
  });

  test("the word, and what was wrong with another", () => {
    expect(words(word, "clock")).toEqual(["Not “clock”, but “click”. Another machine."]);
    expect(words(word, "clik")).toEqual(["It is written “click”; taken with its slip of the pen."]);
    expect(words(word, undefined)).toEqual(["The answer is “click”."]);
  });
});

test.each([
  [{ right: true, answered: true, score: 1, failedCritical: false }, "Right."],
  [{ right: false, answered: false, score: 0, failedCritical: true }, "Not answered. This one is critical."],
  [{ right: false, answered: true, score: 0.5, failedCritical: false }, "Partly right."],
  [{ right: false, answered: true, score: 0, failedCritical: false }, "Not right."],
])("%j in words", (mark, words) => {
  expect(verdictWords(mark)).toBe(words);
});

describe("the result in words", () => {
  const critical: Question = { ...one, id: "critical", critical: true };
  const score = (answers: [string, unknown][], pass: number) =>
    resultWords(scoreQuiz({ pass, questions: [one, several, critical] }, new Map(answers)), pass);

  test("passed", () => {
    const all: [string, unknown][] = [
      ["one", 0],
      ["several", [0, 1]],
      ["critical", 0],
    ];
    expect(score(all, 0.8)).toEqual({
      headline: "Passed",
      detail: "3 of 3 points, 100 %; the pass mark is 80 %.",
    });
  });

  test("not passed for a critical question although the mark is reached", () => {
    const { headline, detail } = score(
      [
        ["one", 0],
        ["several", [0, 1]],
      ],
      0.6,
    );
    expect(headline).toBe("Not passed yet");
    expect(detail).toBe(
      "2 of 3 points, 66.6 %; the pass mark is 60 %. The mark is reached, but a critical question is not right.",
    );
  });

  test("a result just below the mark does not read as the mark", () => {
    const marks = { score: 0.79999, max: 1, fraction: 0.79999, passed: false, questions: [], unknown: [] };
    expect(resultWords(marks, 0.8).detail).toContain("79.9 %");
  });
});
