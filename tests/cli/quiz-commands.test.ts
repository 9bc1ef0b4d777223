/** `score`, `chance` and `items` as they are called. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { projectDir } from "../support/project.ts";
import { runTool } from "../support/run-command.ts";

const file = (name: string, text: string): string => {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, text);
  return path;
};
const quizFile = () => join(writeFolder(soundFiles), "modules/box/quiz.yaml");

test("score marks answers as the page does", async () => {
  const answers = file(
    "a.json",
    JSON.stringify({
      answers: { first: 0, several: ["The wheel", "The lid"], amount: "0.05 L", stranger: 1 },
    }),
  );
  const { code, stdout } = await runTool(["score", "--quiz", quizFile(), "--answers", answers, "--json"]);
  expect(code).toBe(0);
  const scored = JSON.parse(stdout) as {
    score: number;
    max: number;
    unknown: string[];
    questions: { id: string; score: number }[];
  };
  // The first is right, ticking everything earns nothing, 0.05 L are 50 mL, the order is not answered.
  expect(scored.questions.map(({ id, score }) => [id, score])).toEqual(
    expect.arrayContaining([
      ["first", 1],
      ["several", 0],
      ["amount", 1],
    ]),
  );
  expect(scored.score).toBe(2);
  expect(scored.unknown).toEqual(["stranger"]);
});

test.each([
  ["not JSON", "{", "is not JSON"],
  ["a list of numbers", "[1, 2]", "expected"],
  ["text", '"all right"', "expected"],
])("answers that are %s are refused", async (_, text, says) => {
  const ended = await runTool(["score", "--quiz", quizFile(), "--answers", file("a.json", text)]);
  expect(ended.code).toBe(1);
  expect(ended.stderr).toContain(says);
  expect(ended.stderr).not.toContain("    at ");
});

test("figures that are no figures earn nothing, and a decimal comma has its meaning", async () => {
  const quiz = quizFile();
  const earned = async (amount: unknown) => {
    const answers = file("a.json", JSON.stringify({ amount }));
    const { stdout } = await runTool(["score", "--quiz", quiz, "--answers", answers, "--json"]);
    return (JSON.parse(stdout) as { questions: { id: string; score: number }[] }).questions.find(
      ({ id }) => id === "amount",
    )!.score;
  };
  expect(await earned("1e999")).toBe(0);
  expect(await earned("50,0 mL")).toBe(1);
  expect(await earned({ toString: "50" })).toBe(0);
});

test("chance is told with its mean and every total", async () => {
  const { code, stdout } = await runTool(["chance", "--quiz", quizFile(), "--json"]);
  expect(code).toBe(0);
  const { pass, mean, totals } = JSON.parse(stdout) as {
    pass: number;
    mean: number;
    totals: { chance: number }[];
  };
  expect(pass).toBeLessThan(0.05);
  expect(mean).toBeGreaterThan(0.5);
  expect(totals.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
});

test("items reads scores, and writes a report and a table", async () => {
  const [html, csv] = [join(temporaryFolder(), "r.html"), join(temporaryFolder(), "r.csv")];
  const { code, stdout } = await runTool([
    "items",
    `${projectDir}/tests/reference/quiz/lsat6_patterns.csv`,
    "--html",
    html,
    "--csv",
    csv,
    "--json",
  ]);
  expect(code).toBe(0);
  const { persons, alpha, items } = JSON.parse(stdout) as {
    persons: number;
    alpha: number;
    items: { id: string; difficulty: number }[];
  };
  expect(persons).toBe(1000);
  // Alpha of LSAT section 6, verified with R.
  expect(alpha).toBeCloseTo(0.2949971922, 9);
  expect(items.map(({ id }) => id)).toEqual(["Q1", "Q2", "Q3", "Q4", "Q5"]);
  const { readFileSync } = await import("node:fs");
  expect(readFileSync(html, "utf8").match(/<svg/g)).toHaveLength(10);
  expect(readFileSync(csv, "utf8").split("\n")).toHaveLength(7);
});

test("items marks sittings and tells which options were taken", async () => {
  const sittings = [0, 0, 1].map((first) => JSON.stringify({ answers: { first, several: [0] } })).join("\n");
  const { code, stdout } = await runTool([
    "items",
    file("s.jsonl", sittings),
    "--quiz",
    quizFile(),
    "--json",
  ]);
  expect(code).toBe(0);
  const { persons, note, items } = JSON.parse(stdout) as {
    persons: number;
    note: string;
    items: { id: string; difficulty: number; options: { taken: number }[] }[];
  };
  expect(persons).toBe(3);
  expect(note).toContain("few");
  expect(items[0]).toMatchObject({ id: "first", options: [{ taken: 2 }, { taken: 1 }] });
  expect(items[0]!.difficulty).toBeCloseTo(2 / 3, 12);
});

test.each([
  ["a word for a score", "a,b\n1,yes\n", '2: "yes"'],
  ["no head", "1,0\n1,1\n", "must name the questions"],
  ["a column twice", "a,a\n1,1\n", "stands twice"],
  ["no row", "a,b\n", "no complete row"],
])("a table with %s is refused with its line", async (_, text, says) => {
  const ended = await runTool(["items", file("t.csv", text)]);
  expect(ended.code).toBe(1);
  expect(ended.stderr).toContain(says);
});

test("wrong calls say what is missing", async () => {
  expect(await runTool(["items"])).toMatchObject({ code: 2 });
  expect(await runTool(["chance"])).toMatchObject({ code: 2 });
  expect(await runTool(["score", "--quiz", "content/other.yaml", "--answers", "x.json"])).toMatchObject({
    code: 2,
  });
});
