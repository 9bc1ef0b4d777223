/** A saved sitting earns the same figure, byte for byte, in Node, in the browser and by `score`. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import * as esbuild from "esbuild";
import * as fc from "fast-check";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import { quizDigest } from "../../src/engine/quiz/quiz-digest.ts";
import { markSitting, readSittingFile, writeSitting } from "../../src/engine/quiz/sitting-file.ts";
import { anyAnswer, anyQuiz, rightAnswer } from "../engine/quiz/questions.ts";
import { changed, type Files } from "../support/content-folder.ts";
import { projectDir } from "../support/project.ts";
import { runTool } from "../support/run-command.ts";
import { withBrowser } from "./site/browser.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-"));
const visitor = withBrowser(`${pathToFileURL(folder).href}/`);
const quizFile = "modules/box/quiz.yaml";
const first = "questions:\n  - id: first";
const contentOf = (name: string): string => join(folder, `${name}-content`);

async function build(name: string, files: Files): Promise<void> {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(contentOf(name), path)), { recursive: true });
    writeFileSync(join(contentOf(name), path), text);
  }
  const { code, stderr } = await runTool(["build", "--content", contentOf(name), "--to", join(folder, name)]);
  expect(code, stderr).toBe(0);
}

/** The engine as pages carry it, under a name of its own. */
let engine: string;

beforeAll(async () => {
  await build("open", changed(quizFile, first, `paper: 5\n${first}`));
  await build("supervised", changed(quizFile, first, `supervised: true\npaper: 7\n${first}`));
  const { outputFiles } = await esbuild.build({
    stdin: {
      contents: `export { markSitting, readSittingFile } from "./src/engine/quiz/sitting-file.ts";`,
      resolveDir: projectDir,
      loader: "ts",
    },
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "benchwrightEngine",
    write: false,
  });
  engine = outputFiles[0]!.text;
}, 180_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Case {
  readonly quiz: Quiz;
  readonly of: { readonly module: string; readonly revision: number };
  readonly text: string;
}

/** What a sitting earns, or why it is refused, as text. */
function markedHere({ quiz, of, text }: Case): string {
  const read = readSittingFile(text);
  return JSON.stringify(read.ok ? markSitting(quiz, of, read.value) : read);
}

function markedThere(page: Page, cases: readonly Case[]): Promise<string[]> {
  return page.evaluate((all) => {
    const { markSitting: mark, readSittingFile: read } = Reflect.get(globalThis, "benchwrightEngine") as {
      markSitting: typeof markSitting;
      readSittingFile: typeof readSittingFile;
    };
    return all.map(({ quiz, of, text }) => {
      const sitting = read(text);
      return JSON.stringify(sitting.ok ? mark(quiz, of, sitting.value) : sitting);
    });
  }, cases as Case[]);
}

test("hundreds of sittings of any quiz earn the same bytes in Node and in the browser", async () => {
  const of = { module: "box", revision: 1 };
  const anyCase = fc
    .tuple(anyQuiz, fc.array(anyAnswer, { maxLength: 7 }), fc.string(), fc.nat(5), fc.nat(127))
    .map(([any, answers, seed, draw, right]): Case => {
      const count = 1 + (draw % Math.max(1, any.questions.length));
      const quiz = { ...any, paper: draw % 2 === 0 ? undefined : ({ kind: "count", count } as const) };
      // Some right, some of any kind, some to no question.
      const given = new Map(answers.map((answer, at) => [`q${at}`, answer]));
      for (const [at, question] of any.questions.entries())
        if ((right >> at) & 1) given.set(question.id, rightAnswer(question));
      const sitting = { ...of, digest: quizDigest(quiz), seed, preferred: ["q1"], answers: given };
      // As it goes to the browser: quizzes reach it as JSON.
      return { of, text: writeSitting(sitting), quiz: JSON.parse(JSON.stringify(quiz)) as Quiz };
    });
  const cases = fc.sample(anyCase, { numRuns: 400, seed: 20261127 });
  const { page } = await visitor.open("open/index.html");
  await page.evaluate(engine);
  const [here, there] = [cases.map(markedHere), await markedThere(page, cases)];
  expect(there).toEqual(here);
  // The comparison has had something to compare.
  expect(here.filter((text) => text.startsWith('{"ok":true')).length).toBeGreaterThan(300);
  expect(new Set(here.map((text) => /"fraction":([\d.e-]+)/.exec(text)?.[1])).size).toBeGreaterThan(20);
});

test("a sitting that the page saved earns by score what the browser makes of it, byte for byte, and what the page refuses to say", async () => {
  const { page } = await visitor.open("supervised/modules/box/quiz/index.html");
  await page.getByLabel(/Number of the paper/).fill("K 18");
  await page.keyboard.press("Tab");
  for (const box of await page.getByRole("radio").all()) if (await box.isVisible()) await box.check();
  for (const field of await page.locator("form.quiz").getByRole("textbox").all())
    if (await field.isVisible()) await field.fill("3,3 mm");
  const close = page.getByRole("button", { name: "Close my answers" });
  await close.click();
  if (await close.isVisible()) await close.click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the file" }).click(),
  ]);
  const file = join(folder, "box-1.sitting.json");
  await download.saveAs(file);
  const call = ["score", "--content", contentOf("supervised"), "--answers", file, "--json"];
  const { code, stdout, stderr } = await runTool(call);
  expect(code, stderr).toBe(0);
  const { quiz } = checkContent(contentOf("supervised")).content.quizzes.get("box")!;
  await page.evaluate(engine);
  const [there] = await markedThere(page, [
    {
      quiz: JSON.parse(JSON.stringify(quiz)) as Quiz,
      of: { module: "box", revision: 1 },
      text: readFileSync(file, "utf8"),
    },
  ]);
  const { value } = JSON.parse(there!) as { value: { score: object; unanswered: string[]; paper: unknown } };
  const { module, revision, digest, seed } = JSON.parse(readFileSync(file, "utf8")) as Record<
    string,
    unknown
  >;
  const scored = { ...value.score, unanswered: value.unanswered, module, revision, digest, seed };
  expect(`${JSON.stringify(scored, undefined, 2)}\n`).toBe(stdout);
  expect(seed).toBe("K 18");
  expect((value.score as { questions: unknown[] }).questions).toHaveLength(7);
});

test("what the page keeps of a sitting earns by score what the page has said", async () => {
  const { page } = await visitor.open("open/modules/box/quiz/index.html");
  for (const box of await page.getByRole("radio").all()) if (await box.isVisible()) await box.check();
  for (const box of await page.getByRole("checkbox").all()) if (await box.isVisible()) await box.check();
  const check = page.getByRole("button", { name: "Check my answers" });
  await check.click();
  if (await check.isVisible()) await check.click();
  const said = page.getByText(/^Sitting 1: /);
  const [, figure] = /^Sitting 1: (.* %); the pass mark/.exec(await said.innerText())!;
  const kept = await page.evaluate(() => localStorage.getItem("benchwright:quiz:box@1"));
  const file = join(folder, "kept.json");
  writeFileSync(file, kept!);
  const quiz = join(contentOf("open"), quizFile);
  const { stdout } = await runTool(["score", "--quiz", quiz, "--answers", file]);
  expect(stdout).toContain(`: ${figure}; the pass mark`);
  expect(figure).toMatch(/ of 5 points, /);
});
