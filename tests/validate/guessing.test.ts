/** The warning of a quiz that is passed by guessing: of the paper, not of the pool, and each remedy does what it says. */
import { expect, test } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { changed, type Files, soundFiles, writeFolder } from "../support/content-folder.ts";

const quizFile = "modules/box/quiz.yaml";
const pool = (head: string, count: number): Files => {
  const questions = Array.from(
    { length: count },
    (_, at) => `  - id: q${at}
    kind: choose-one
    ask: Which, at ${at}?
    options: [{text: a, right: true}, {text: b, why: no}, {text: c, why: no}, {text: d, why: no}]
    objective: ${at % 2 === 0 ? "springs" : "oil"}
    why: so
    see: "#lid-off"
`,
  );
  return new Map([...soundFiles, [quizFile, `pass: 60 %\n${head}questions:\n${questions.join("")}`]]);
};

const warned = (files: Files): string[] =>
  checkContent(writeFolder(files))
    .diagnostics.filter(({ code }) => code === "quiz-guessable")
    .map(({ message }) => message);

test("a pool that can't be guessed does not hide a paper that can", () => {
  expect(warned(pool("", 12))).toEqual([]);
  const [message, ...rest] = warned(pool("paper: 2\n", 12));
  expect(rest).toEqual([]);
  // 60 % of two questions of four options are both of them: 1/16.
  expect(message).toContain("passes a paper drawn from it with a chance of 6.3 %");
});

test("a remedy is a paper, written as it goes into the file; with it the warning is gone", () => {
  const [message] = warned(pool("paper: 2\n", 12));
  const written = /\((paper: [^)]+)\)/.exec(message!)![1]!;
  // Three of four are passed by 13/256, three of five by 106/1024, four of six by 154/4096: 3.8 %.
  expect(written).toBe("paper: 6");
  expect(message).toContain("(paper: 6) brings it to 3.8 %");
  expect(warned(pool(`${written}\n`, 12))).toEqual([]);
});

test("of objectives the one with most left to draw is lengthened", () => {
  const [message] = warned(pool("paper: {objectives: {springs: 1, oil: 1}}\n", 8));
  const written = /\((paper: [^)]+)\)/.exec(message!)![1]!;
  expect(written).toBe("paper: {objectives: {springs: 3, oil: 3}}");
  expect(warned(pool(`${written}\n`, 8))).toEqual([]);
});

test("where the whole pool is too short, more questions are asked for", () => {
  expect(warned(pool("paper: 1\n", 2))[0]).toMatch(
    /all questions of the pool asked, and \d+ more questions? like the first brings? it to/,
  );
});

test("a quiz without a paper is told as before", () => {
  const [message] = warned(
    changed(quizFile, "questions:\n  - id: first", "pass: 10 %\nquestions:\n  - id: first"),
  );
  expect(message).toMatch(/^someone who guesses passes with a chance of \d/);
});
