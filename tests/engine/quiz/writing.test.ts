/** Kinds that are answered in writing: short texts, and figures worked out from a case. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import { questionProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { remarksOn, scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { type SumName, sumNames, takenBy, workSum } from "../../../src/engine/quiz/sums.ts";
import { askedCase } from "../../../src/engine/quiz/worked.ts";
import { anyAnswer, cases, quantityQuestion, quiz, word } from "./questions.ts";

const mark = (question: Question, given: unknown) =>
  scoreQuiz(quiz(1, question), new Map([[question.id, given]])).questions[0]!;
const codes = (question: Question) => questionProblems(question).map(({ code, at }) => [code, ...at]);

describe("a short text", () => {
  const question = word("q", ["Öl für Maschinen", "machine oil"], 2, ["machine coil"]);

  test.each([
    ["machine oil", 1],
    ["  MACHINE   Oil ", 1],
    ["ol fur maschinen", 1],
    ["Öl für\nMaschinen", 1],
    // One letter missing, one wrong.
    ["machne oul", 1],
    ["machine", 0],
    // One letter from the right answer, and a known mistake.
    ["machine coil", 0],
    ["Machine Coil", 0],
    ["oil", 0],
    [5, 0],
  ])("%j earns %d", (given, credit) => {
    expect(mark(question, given).score).toBe(credit);
  });

  test("vowel signs of other scripts are not accents: Hindi for oil, and for floor (from memory)", () => {
    expect(mark(word("q", ["तेल"]), "तल").score).toBe(0);
    expect(mark(word("q", ["तेल"]), "तेल").score).toBe(1);
  });

  test("without slips only the word itself is right", () => {
    expect(mark(word("q", ["governor"]), "governer").score).toBe(0);
    expect(mark(word("q", ["governor"], 1), "governer").score).toBe(1);
  });

  test("a mistake is told with its reason, a slip as one", () => {
    expect(remarksOn(question, "machine coil")).toEqual([
      { verdict: "wrong", about: ["machine coil", "Öl für Maschinen"], because: "machine coil is another" },
    ]);
    expect(remarksOn(question, "machin oil")).toEqual([
      { verdict: "right", about: ["machin oil", "machine oil"], because: "taken with its slip of the pen" },
    ]);
  });

  test("ten megabytes of text are refused, and not marked", () => {
    expect(mark(question, "oil ".repeat(2_500_000)).problem?.code).toBe("too-long");
  });

  test("mistakes of the author", () => {
    expect(codes(question)).toEqual([]);
    expect(codes(word("q", []))).toEqual([["no-accepted-answer"]]);
    expect(codes(word("q", ["Öl", "ol"]))).toEqual([["equal-answers", 0, 1]]);
    expect(codes(word("q", ["oil"], 1))).toEqual([["slips-too-wide"]]);
    expect(codes(word("q", ["grease"], 0, ["GREASE"]))).toEqual([["mistake-accepted", 0]]);
  });
});

describe("figures written in odd ways", () => {
  const question = quantityQuestion("q", "1.5 mm", "0.01 mm");

  test.each([
    // A comma is a decimal comma; ½ is one half; a bare number has the unit of the answer.
    ["1,5", 1, undefined],
    ["1½ mm", 1, undefined],
    ["3/2", 1, undefined],
    ["½", 0, undefined],
    ["1e999", 0, "too-large"],
    ["١٢", 0, "digits"],
    ["1,500", 0, "ambiguous-number"],
  ])("%s earns %d, refused as %s", (given, credit, code) => {
    expect(mark(question, given).score).toBe(credit);
    expect(mark(question, given).problem?.code).toBe(code);
  });

  test("ten megabytes are refused", () => {
    expect(mark(question, "1".repeat(10_000_000)).problem?.code).toBe("too-long");
  });
});

describe("a case to be worked", () => {
  const question = cases("q", ["3 mm", "4.5 mm", "6 mm"], "0.05 mm");

  test("is judged against the case that is asked", () => {
    for (const [chosen, right] of ["3", "4.5 mm", "0.6 cm"].entries()) {
      expect(mark({ ...question, chosen }, right).score).toBe(1);
      expect(mark({ ...question, chosen: (chosen + 1) % 3 }, right).score).toBe(0);
    }
  });

  test("any answer earns from nothing to all", () => {
    fc.assert(
      fc.property(anyAnswer, fc.nat(2), (given, chosen) => {
        expect([0, 1]).toContain(mark({ ...question, chosen }, given).score);
      }),
    );
  });

  test("each case is asked about as often: chi-square with two degrees of freedom below its 99.9 % point, 13.82", () => {
    const counts = [0, 0, 0];
    for (let seed = 0; seed < 3000; seed++) counts[askedCase(question, `s${seed}`).chosen]!++;
    expect(counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(13.82);
  });

  test("mistakes of the author", () => {
    expect(codes(question)).toEqual([]);
    expect(codes(cases("q", ["3 mm"], "1 mm"))).toEqual([["too-few-cases"]]);
    expect(codes({ ...question, tolerance: undefined })).toEqual([["tolerance-missing"]]);
  });
});

describe("sums", () => {
  /** By hand: lengths times forces; pitches of ISO 261, BS 93 (2 BA: 0.81 mm) and BS 84 (1/4 in BSW: 20 threads). */
  const rows: readonly [SumName, Record<string, string>, number, string][] = [
    ["convert", { from: "2 in" }, 2, "in"],
    ["torque", { force: "20 N", arm: "150 mm" }, 3, "N·m"],
    ["force", { torque: "3 N·m", arm: "15 cm" }, 20, "N"],
    ["pitch", { thread: "M3" }, 0.5, "mm"],
    ["pitch", { thread: "2 BA" }, 0.81, "mm"],
    ["threads-per-inch", { thread: "1/4 in BSW" }, 20, ""],
    ["advance", { thread: "M6", turns: "2 1/2" }, 2.5, "mm"],
    ["turns", { thread: "M3x0.5", length: "8 mm" }, 16, ""],
    ["play", { first: "6.20 mm", second: "6.35 mm" }, 0.15, "mm"],
  ];

  test.each(rows)("%s of %j", (sum, figures, amount, unit) => {
    const worked = workSum(sum, new Map(Object.entries(figures)));
    expect(worked).toMatchObject({ ok: true, value: { unit } });
    expect(worked.ok && worked.value.amount).toBeCloseTo(amount, 9);
  });

  test("every sum has a row above", () => {
    expect(new Set(rows.map(([sum]) => sum))).toEqual(new Set(sumNames));
    for (const [sum, figures] of rows) expect(Object.keys(figures)).toEqual([...takenBy(sum)]);
  });

  test.each([
    ["torque", { force: "20 N" }, "figure-missing"],
    ["torque", { force: "20 N", arm: "1 m", constructor: "x" }, "figure-unknown"],
    ["torque", { force: "20 kg", arm: "1 m" }, "figure"],
    ["pitch", { thread: "process.exit(1)" }, "figure"],
    ["force", { torque: "3 N·m", arm: "0 mm" }, "sum"],
    ["turns", { thread: "M3", length: "1e999 mm" }, "figure"],
  ] as const)("%s of %j is refused: %s", (sum, figures, code) => {
    expect(workSum(sum, new Map(Object.entries(figures)))).toMatchObject({ ok: false, problem: { code } });
  });
});
