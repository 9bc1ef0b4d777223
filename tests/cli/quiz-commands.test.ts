/** `score`, `chance` and `items` as they are called. */
import { copyFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { drawPaper } from "../../src/engine/quiz/paper.ts";
import { quizDigest } from "../../src/engine/quiz/quiz-digest.ts";
import { changed, soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
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

describe("a sitting that was handed in", () => {
  /** As the page of the sound programme's quiz writes it, all right but for the order. */
  const handedIn = (content: string, change: Record<string, unknown> = {}): string => {
    const { quiz } = checkContent(content).content.quizzes.get("box")!;
    const answers = [
      ["first", "The lid"],
      ["several", ["The wheel"]],
      ["amount", "50 mL"],
    ];
    const fields = {
      sitting: 1,
      module: "box",
      revision: 1,
      digest: quizDigest(quiz),
      seed: "K 17",
      preferred: [],
    };
    return file("box-1.sitting.json", JSON.stringify({ ...fields, answers, ...change }));
  };
  const supervised = () =>
    writeFolder(
      changed(
        "modules/box/quiz.yaml",
        "questions:\n  - id: first",
        "supervised: true\npaper: 8\nquestions:\n  - id: first",
      ),
    );

  test("is marked from the content folder alone, by its own paper, to the same bytes each time", async () => {
    const content = supervised();
    const call = ["score", "--content", content, "--answers", handedIn(content), "--json"];
    const { code, stdout } = await runTool(call);
    expect(code).toBe(0);
    const marked = JSON.parse(stdout) as {
      max: number;
      questions: { id: string; score: number }[];
      unanswered: string[];
    };
    expect(marked).toMatchObject({ module: "box", revision: 1, seed: "K 17", passed: false });
    expect(marked.questions).toHaveLength(8);
    const { quiz } = checkContent(content).content.quizzes.get("box")!;
    const drawn = drawPaper(quiz, "K 17").questions.map(({ id }) => id);
    expect(marked.questions.map(({ id }) => id)).toEqual(drawn);
    const answered = drawn.filter((id) => ["first", "several", "amount"].includes(id));
    expect(marked.questions.filter(({ score }) => score === 1).map(({ id }) => id)).toEqual(answered);
    expect(marked.unanswered).toEqual(drawn.filter((id) => !answered.includes(id)));
    expect((await runTool(call)).stdout).toBe(stdout);
  });

  test("is told in words, with the number of its paper", async () => {
    const content = supervised();
    const { stdout } = await runTool(["score", "--content", content, "--answers", handedIn(content)]);
    expect(stdout).toContain("A sitting on box, revision 1, paper K 17, 8 of 9 questions.");
    expect(stdout).toMatch(/Not passed: \d/);
    expect(stdout).toContain("not answered");
  });

  test.each<[string, Record<string, unknown>, RegExp]>([
    [
      "another revision",
      { revision: 2 },
      /found a sitting on revision 2; expected one on revision 1\..*content as it was/,
    ],
    [
      "another quiz",
      { digest: "0".repeat(32) },
      /found a sitting on the quiz 0{32}; expected one on the quiz [0-9a-f]{32}\..*changed/,
    ],
    ["a module that is not there", { module: "motor" }, /no quiz of a module "motor"; found quizzes of box/],
    ["an inherited name for a module", { module: "constructor" }, /no quiz of a module "constructor"/],
    ["a score of its own", { score: 9 }, /found a field score; expected answers and no score/],
    ["answers that are no list", { answers: { first: 0 } }, /answers: an object; expected a list/],
    ["no digest", { digest: null }, /digest: null; expected the quiz's digest/],
  ])("with %s is refused, and what to do is said", async (_, change, says) => {
    const content = supervised();
    const ended = await runTool(["score", "--content", content, "--answers", handedIn(content, change)]);
    expect(ended.code).toBe(1);
    expect(ended.stderr).toMatch(says);
    expect(ended.stderr).not.toContain("    at ");
    expect(ended.stdout).toBe("");
  });

  test("of another module than the quiz that the call names is refused", async () => {
    const content = supervised();
    const answers = handedIn(content, { module: "motor" });
    const ended = await runTool([
      "score",
      "--quiz",
      join(content, "modules/box/quiz.yaml"),
      "--answers",
      answers,
    ]);
    expect(ended).toMatchObject({ code: 1 });
    expect(ended.stderr).toContain("found a sitting on motor; expected one on box");
  });

  test("with answers to unknown questions, or of the wrong kind, is marked, and they earn nothing", async () => {
    const content = supervised();
    const answers = [
      ["stranger", 0],
      ["first", { right: true }],
      ["several", "all of them"],
      ["word", 7],
    ];
    const { code, stdout } = await runTool([
      "score",
      "--content",
      content,
      "--answers",
      handedIn(content, { answers }),
    ]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Not passed: 0 of 8 points/);
    expect(stdout).toContain("stranger: no question of this quiz; it counts for nothing");
    expect(stdout).toMatch(/not readable: found an object|not readable: found a string/);
  });

  test("a folder of them is what items reads, their cases and all", async () => {
    const content = writeFolder(soundFiles);
    const folder = temporaryFolder();
    for (const at of [1, 2, 3]) copyFileSync(handedIn(content), join(folder, `box-${at}.sitting.json`));
    writeFileSync(join(folder, "notes.txt"), "no sitting");
    const quiz = join(content, "modules/box/quiz.yaml");
    const { stdout } = await runTool(["items", folder, "--quiz", quiz, "--json"]);
    expect(JSON.parse(stdout)).toMatchObject({
      persons: 3,
      items: [{ id: "first", difficulty: 1 }, {}, {}, {}, {}, {}, {}, {}, {}],
    });
  });
});

test("ten megabytes are refused before they are read", async () => {
  const text = `{"answers": {"first": "${"x".repeat(10_000_000)}"}}`;
  const ended = await runTool(["score", "--quiz", quizFile(), "--answers", file("a.json", text)]);
  expect(ended.code).toBe(1);
  expect(ended.stderr).toMatch(/found 100000\d\d bytes; expected 1048576 at most/);
});

test("answers to a quiz that draws papers need the seed that drew theirs", async () => {
  const quiz = join(
    writeFolder(
      changed("modules/box/quiz.yaml", "questions:\n  - id: first", "paper: 4\nquestions:\n  - id: first"),
    ),
    "modules/box/quiz.yaml",
  );
  const call = (given: object) => [
    "score",
    "--quiz",
    quiz,
    "--answers",
    file("a.json", JSON.stringify(given)),
    "--json",
  ];
  const without = await runTool(call({ answers: { first: 0 } }));
  expect(without.code).toBe(1);
  expect(without.stderr).toContain('draws 4 of 9 questions; expected "seed"');
  const { stdout } = await runTool(call({ answers: { first: 0 }, seed: "s" }));
  expect((JSON.parse(stdout) as { max: number }).max).toBe(4);
  const items = await runTool(["items", file("s.jsonl", '{"answers": {}}'), "--quiz", quiz]);
  expect(items.code).toBe(1);
  expect(items.stderr).toContain('s.jsonl:1: this quiz draws 4 of 9 questions; expected "seed"');
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

test("chance of a quiz that draws papers is told over them, with how many they are and the easiest", async () => {
  const text = "paper: 2\npass: 50 %\nquestions:\n  - id: first";
  const quiz = join(
    writeFolder(changed("modules/box/quiz.yaml", "questions:\n  - id: first", text)),
    "modules/box/quiz.yaml",
  );
  const { stdout } = await runTool(["chance", "--quiz", quiz, "--json"]);
  const found = JSON.parse(stdout) as { papers: string; worst: { pass: number; questions: string[] } };
  // 9! / (2! 7!).
  expect(found).toMatchObject({ papers: "36", max: 2 });
  // Two coins, of which one is enough: a choice of two, and a place of two.
  expect(found.worst).toEqual({ pass: 0.75, questions: ["first", "where"] });
  const words = await runTool(["chance", "--quiz", quiz]);
  expect(words.stdout).toContain("Over all 36 papers of 2 from 9 questions");
  expect(words.stdout).toContain("easiest to guess is passed with a chance of 75 %");
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
