/** A supervised sitting at the mentor's desk: not marked there, given out for `score`, and its percent signed. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect, test, vi } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { changed } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { answerQuestion } from "./site/answering.ts";
import { type Visit, withBrowser } from "./site/browser.ts";
import { give, useKey } from "./site/desk-steps.ts";
import { mouse } from "./site/hands.ts";
import { withRecordSite } from "./site/record-site.ts";
import { cellText, savedBy, savedRecord } from "./site/record-steps.ts";

// From page to page, and the command besides.
vi.setConfig({ testTimeout: 240_000 });

const quizFile = "modules/box/quiz.yaml";
const first = "questions:\n  - id: first";
const site = withRecordSite(changed(quizFile, first, `supervised: true\npaper: 4\n${first}`));
const visitor = withBrowser(() => site.url("localhost"));
const name = "box-answers.json";
let trainee: Page;
beforeAll(async () => {
  trainee = (await visitor.open("modules/box/quiz/index.html")).page;
});

interface Sat {
  /** Ids of the questions that were asked. */
  readonly asked: readonly string[];
  /** The one that was answered wrong. */
  readonly wrong: string;
}

/** Answers what is asked, the last of it wrong, and closes the sitting. */
async function sit(): Promise<Sat> {
  const kept = trainee.getByText(/^Kept in your record/);
  await kept.waitFor({ state: "detached" });
  const { quiz } = checkContent(site.contentDir).content.quizzes.get("box")!;
  const asked = await trainee
    .locator("[data-question]:visible")
    .evaluateAll((all) => all.map(({ dataset }) => dataset.question!));
  const wrong = asked.at(-1)!;
  for (const question of quiz.questions.filter(({ id }) => asked.includes(id)))
    await answerQuestion(trainee, question, question.id !== wrong, mouse);
  await trainee.getByRole("button", { name: "Close my answers" }).click();
  await kept.waitFor();
  return { asked, wrong };
}

/** The record as the trainee hands it in, opened by a mentor. */
async function atTheDesk(): Promise<Visit> {
  const record = await trainee.context().newPage();
  await record.goto(`${site.url("localhost")}record/index.html`);
  await record.getByRole("heading", { name: "Sign-offs" }).waitFor();
  await expect.poll(() => cellText(record, "Quiz")).toMatch(/^handed in/);
  const { text } = await savedRecord(record);
  const visit = await visitor.open("desk/index.html");
  await useKey(visit.page, "Ada");
  await give(visit.page, "Open trainees’ files", text, "trainee.record.json");
  return visit;
}

/** What `score` makes of the answers that the desk saves. */
async function expectScored(page: Page, { asked, wrong }: Sat): Promise<void> {
  const save = page.getByRole("button", { name: "Save the answers for score" });
  const saved = await savedBy(page, () => save.click());
  expect(saved.name).toBe(name);
  const file = join(site.contentDir, "..", name);
  writeFileSync(file, saved.text);
  const args = ["score", "--quiz", join(site.contentDir, quizFile), "--answers", file, "--json"];
  const { code, stdout, stderr } = await runTool(args);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  const { questions } = JSON.parse(stdout) as { questions: { id: string; score: number; max: number }[] };
  expect(questions.map(({ id }) => id).sort()).toEqual([...asked].sort());
  expect(questions.filter(({ score, max }) => score < max).map(({ id }) => id)).toEqual([wrong]);
}

test("the desk can't mark it and says so; score marks the answers that it saves", async () => {
  await trainee.getByLabel(/Number of the paper/).fill("K 17");
  await trainee.keyboard.press("Tab");
  const sat = await sit();
  const { page, troubles } = await atTheDesk();
  const note = page.getByText("The sitting was supervised and can’t be marked here");
  await note.waitFor();
  expect(await note.innerText()).toContain(`score --quiz ${quizFile} --answers ${name}`);
  expect(await note.innerText()).toContain("(K 17)");
  expect(await page.getByLabel("Quiz, as marked with score, in percent").count()).toBe(1);
  await expectScored(page, sat);
  expect(troubles).toEqual([]);
});

test("a later paper, which prefers what was not asked before, is the paper that score marks", async () => {
  await trainee.getByRole("button", { name: "Sit again" }).first().click();
  const sat = await sit();
  const { page } = await atTheDesk();
  await expectScored(page, sat);
});
