import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawPaper } from "../../../src/engine/quiz/paper.ts";
import { questionProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { markSitting, readSittingFile, writeSitting } from "../../../src/engine/quiz/sitting-file.ts";
import { namedAnswer, withoutKey } from "../../../src/engine/quiz/without-key.ts";
import {
  anyAnswer,
  anyQuiz,
  cases,
  groups,
  one,
  pairs,
  places,
  quiz,
  rightAnswer,
  word,
} from "./questions.ts";

const paper = quiz(0.5, one("guard", "rww"), word("oil", ["oil"]), cases("sum", ["3 mm", "4 mm"], "1 %"));
const of = { module: "box", revision: 2 };
const sitting = {
  ...of,
  seed: "s",
  preferred: [],
  answers: new Map<string, unknown>([
    ["guard", "option 0"],
    ["oil", "OIL"],
  ]),
};
const written = JSON.parse(writeSitting(sitting));
const marked = (change: object) => {
  const read = readSittingFile(JSON.stringify({ ...written, ...change }));
  return read.ok ? markSitting(paper, of, read.value) : read;
};

test("a sitting is read as it was written", () => {
  expect(readSittingFile(writeSitting(sitting))).toEqual({ ok: true, value: sitting });
});

describe("marking a file", () => {
  test("says what was not answered, and which answers belong to no question", () => {
    const result = marked({ answers: [...written.answers, ["constructor", 1]] });
    expect(result).toMatchObject({
      ok: true,
      value: { unanswered: ["sum"], score: { score: 2, max: 3, unknown: ["constructor"] } },
    });
  });

  test("an answer of the wrong kind earns nothing and is named", () => {
    const result = marked({ answers: [["guard", { right: true }]] });
    expect(result.ok && result.value.score.questions[0]).toMatchObject({
      score: 0,
      problem: { code: "wrong-kind" },
    });
  });

  test("another revision or module is refused, and named", () => {
    expect(marked({ revision: 1 })).toMatchObject({
      ok: false,
      problem: { code: "other-revision", found: "a sitting on revision 1", expected: "one on revision 2" },
    });
    expect(marked({ module: "motor" })).toMatchObject({
      ok: false,
      problem: { code: "other-module", found: "a sitting on motor" },
    });
  });

  test.each([
    ["", "not-json"],
    ["{", "not-json"],
    ["null", "not-a-sitting"],
    ["[]", "not-a-sitting"],
    ["{}", "not-a-sitting"],
    [JSON.stringify({ ...written, seed: 4 }), "not-a-sitting"],
    [JSON.stringify({ ...written, revision: "2" }), "not-a-sitting"],
    [JSON.stringify({ ...written, preferred: [1] }), "not-a-sitting"],
    [JSON.stringify({ ...written, answers: { guard: 0 } }), "not-a-sitting"],
    [
      JSON.stringify({
        ...written,
        answers: [
          ["a", 1],
          ["a", 2],
        ],
      }),
      "not-a-sitting",
    ],
    [`{"sitting": 1, "revision": 1e999, "module": "box"}`, "not-a-sitting"],
  ])("%.60s is refused as %s", (text, code) => {
    expect(readSittingFile(text)).toMatchObject({ ok: false, problem: { code } });
  });
});

test("ten megabytes are refused unread", () => {
  const text = `{"text": "${"x".repeat(10_000_000)}"}`;
  expect(readSittingFile(text)).toMatchObject({ ok: false, problem: { code: "too-large" } });
});

describe("a question without its key", () => {
  test("answers named on the page earn with the whole question what they earned, whatever the order", () => {
    fc.assert(
      fc.property(
        anyQuiz,
        fc.array(anyAnswer, { minLength: 6, maxLength: 6 }),
        fc.string(),
        (whole, given, seed) => {
          const open = { ...whole, questions: whole.questions.map(withoutKey) };
          const drawn = drawPaper(open, seed);
          const named = new Map(
            drawn.questions.map((question, at) => [question.id, namedAnswer(question, given[at])]),
          );
          const score = scoreQuiz(drawPaper(whole, seed), named);
          expect(score.score).toBeLessThanOrEqual(score.max);
          expect(score.score).toBeGreaterThanOrEqual(0);
          const right = new Map(
            drawPaper(whole, seed).questions.map((question) => [question.id, rightAnswer(question)]),
          );
          const rightNamed = new Map(
            drawn.questions.map((question) => [
              question.id,
              byWords(question, right.get(question.id), whole),
            ]),
          );
          expect(scoreQuiz(drawPaper(whole, seed), rightNamed).score).toBe(score.max);
        },
      ),
    );
  });

  /** A right answer in words, read by the stripped question and named again. */
  function byWords(
    stripped: Parameters<typeof namedAnswer>[0],
    answer: unknown,
    whole: typeof paper,
  ): unknown {
    const question = whole.questions.find(({ id }) => id === stripped.id)!;
    return namedAnswer(stripped, namedAnswer(question, answer));
  }

  test("says nothing that is right", () => {
    for (const question of [
      one("a", "rww"),
      pairs("b", 3, 1),
      word("c", ["secret"], 1, ["blunder"]),
      places("d", "wrw"),
      groups("e", "0011"),
      cases("f", ["37 mm", "73 mm"], "1 %"),
    ]) {
      const open = JSON.stringify(withoutKey(question));
      expect(open).not.toMatch(/true|because|secret|blunder|37|73|no use/);
      expect(questionProblems(question)).toEqual([]);
    }
  });
});
