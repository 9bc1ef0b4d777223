/** Times the marking of sittings, and the statistics of a million of them, with the memory that they take. */
import { closeSync, mkdirSync, openSync, readdirSync, readFileSync, rmSync, writeSync } from "node:fs";
import { join } from "node:path";
import { readQuizFile } from "../../src/cli/quiz-file.ts";
import type { ChooseOne } from "../../src/engine/quiz/choose-one.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import type { Answers } from "../../src/engine/quiz/score.ts";
import { projectDir } from "../support/project.ts";
import { toolEntry } from "../support/run-command.ts";
import { generate } from "./generate.ts";
import { measure } from "./measure.ts";
import { type Random, randomFrom } from "./random.ts";
import { median, type Row } from "./row.ts";
import { asShipped } from "./shipped.ts";

const questions = 10;
const budget = 300_000;
const warmUp = 10;
const options = ["A", "B", "C", "D"];

/** In this process, in seconds of one core: what else the machine does is not in it. */
export async function scoreRows(scratch: string): Promise<Row[]> {
  const { scoreQuiz } = await asShipped<Scoring>(scratch, "engine/quiz/score.ts");
  const demo = readQuizFile(join(projectDir, "content/modules/slotted-screws/quiz.yaml")).quiz;
  const mixed = { ...demo, questions: demo.questions.slice(0, questions) };
  const kinds = new Set(mixed.questions.map(({ kind }) => kind)).size;
  return [
    {
      what: "sittings of 10 questions scored, choose one",
      measured: scoredASecond(scoreQuiz, chosen, (random) => random.whole(0, options.length - 1)),
      unit: "a second",
      atLeast: budget,
    },
    {
      what: `sittings of 10 questions scored, ${kinds} kinds, of a demo quiz`,
      measured: scoredASecond(scoreQuiz, mixed, (random, at) => answerTo(mixed, random, at)),
      unit: "a second",
    },
  ];
}

type Scoring = typeof import("../../src/engine/quiz/score.ts");

/** Read from files by the command, from its start to its end, in seconds of one core. */
export async function itemsRows(scratch: string): Promise<Row[]> {
  const folder = join(scratch, "sittings");
  mkdirSync(folder);
  const rows = [];
  for (const { what, file, line, args } of sources(folder)) {
    const small = await itemsOver(folder, file, 100_000, line, args);
    const large = await itemsOver(folder, file, 1_000_000, line, args);
    rows.push(...itemsRowsOf(what, small, large));
  }
  rmSync(folder, { recursive: true });
  return rows;
}

function itemsRowsOf(what: string, small: Statistics, large: Statistics): Row[] {
  const of = `items over 1,000,000 sittings, ${what}`;
  return [
    { what: of, measured: large.aSecond, unit: "a second", atLeast: budget },
    { what: `${of}: peak memory`, measured: large.memory, unit: "MiB" },
    {
      what: `${of}: peak memory against that of 100,000`,
      measured: large.memory / small.memory,
      unit: "×",
      budget: constant,
    },
  ];
}

/** What counts as constant memory: kept sittings would take ten times as much; a long run only lets more garbage lie. */
const constant = 2;

interface Source {
  readonly what: string;
  readonly file: string;
  readonly line: (random: Random) => string;
  readonly args: readonly string[];
}

/** Scores in columns, and answers that the command marks itself. */
function sources(folder: string): Source[] {
  const quiz = writeQuiz(folder);
  return [
    { what: "scores as CSV", file: "scores.csv", line: scoresLine, args: [] },
    { what: "answers as JSON", file: "sittings.jsonl", line: answersLine, args: ["--quiz", quiz] },
  ];
}

interface Statistics {
  readonly aSecond: number;
  readonly memory: number;
}

async function itemsOver(
  folder: string,
  file: string,
  sittings: number,
  line: Source["line"],
  args: readonly string[],
): Promise<Statistics> {
  const path = join(folder, file);
  const random = randomFrom(sittings);
  const head = file.endsWith(".csv") ? `${ids.join(",")}\n` : "";
  writeWhole(
    path,
    blocks(head, sittings, () => line(random)),
  );
  const { cpu, memory } = await measure(
    process.execPath,
    [toolEntry, "items", path, "--json", ...args],
    folder,
  );
  return { aSecond: (sittings / cpu) * 1000, memory };
}

/** Text in pieces of 10,000 lines, so that no file is held in memory. */
function* blocks(head: string, lines: number, line: () => string): Generator<string> {
  yield head;
  for (let done = 0; done < lines; done += 10_000)
    yield Array.from({ length: Math.min(10_000, lines - done) }, line).join("");
}

function writeWhole(path: string, pieces: Iterable<string>): void {
  const file = openSync(path, "w");
  for (const piece of pieces) writeSync(file, piece);
  closeSync(file);
}

const ids = Array.from({ length: questions }, (_, at) => `q${at + 1}`);

/** A person of some ability: the right option, the first, is the more likely the higher it is. */
function choices(random: Random): number[] {
  const ability = random.next();
  return ids.map(() => (random.next() < 0.25 + 0.7 * ability ? 0 : random.whole(1, options.length - 1)));
}

const scoresLine = (random: Random): string =>
  `${choices(random)
    .map((choice) => (choice === 0 ? 1 : 0))
    .join(",")}\n`;

const answersLine = (random: Random): string =>
  `${JSON.stringify({ answers: Object.fromEntries(choices(random).map((choice, at) => [ids[at], choice])) })}\n`;

const chosen: Quiz = {
  pass: 0.8,
  questions: ids.map(
    (id): ChooseOne => ({
      id,
      kind: "choose-one",
      ask: "Which?",
      why: "So.",
      see: "#step",
      objective: undefined,
      critical: false,
      points: 1,
      keepOrder: false,
      options: options.map((text, at) => ({
        text,
        right: at === 0,
        why: at === 0 ? undefined : "Another one is.",
      })),
    }),
  ),
};

/** In the place of a made-up module's own quiz; gives its path. */
function writeQuiz(folder: string): string {
  generate(join(folder, "content"), { modules: 3, seed: 1 });
  const modules = join(folder, "content/modules");
  const quiz = join(modules, readdirSync(modules)[0]!, "quiz.yaml");
  const [see] = /see: .*/.exec(readFileSync(quiz, "utf8"))!;
  writeWhole(quiz, [quizText(see)]);
  return quiz;
}

function quizText(see: string): string {
  const asked = ids.map(
    (id) => `  - id: ${id}
    kind: choose-one
    ask: Which?
    why: So.
    ${see}
    options:
${options.map((text, at) => `      - {text: ${text}, ${at === 0 ? "right: true" : "why: Another one is."}}`).join("\n")}
`,
  );
  return `pass: 80 %\nquestions:\n${asked.join("")}`;
}

/** What someone may answer to a question of the demo, right or wrong by chance. */
function answerTo({ questions: asked }: Quiz, random: Random, at: number): unknown {
  const question = asked[at]!;
  switch (question.kind) {
    case "choose-one":
      return random.whole(0, question.options.length - 1);
    case "choose-several":
      return [...question.options.keys()].filter(() => random.next() < 0.5);
    case "match":
      return question.items.map(() => random.whole(0, question.choices.length - 1));
    default:
      return String(random.whole(1, 20));
  }
}

/** The median of 15 rounds of 10,000 sittings, after ten that are spent on compiling the code. */
function scoredASecond(
  scoreQuiz: Scoring["scoreQuiz"],
  quiz: Quiz,
  answer: (random: Random, at: number) => unknown,
): number {
  const random = randomFrom(1);
  const sittings = Array.from(
    { length: 10_000 },
    (): Answers => new Map(quiz.questions.map(({ id }, at) => [id, answer(random, at)])),
  );
  const rounds = Array.from({ length: warmUp + 15 }, () => {
    const began = process.cpuUsage();
    let passed = 0;
    for (const sitting of sittings) if (scoreQuiz(quiz, sitting).passed) passed++;
    if (passed === sittings.length) throw new Error("everyone has passed by chance");
    const { user, system } = process.cpuUsage(began);
    return (sittings.length / (user + system)) * 1e6;
  });
  return median(rounds.slice(warmUp));
}
