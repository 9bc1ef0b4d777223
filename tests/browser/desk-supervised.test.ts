/** A supervised sitting at the mentor's desk: not marked there, given out for `score`, and its percent signed. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { changed } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { answerQuestion } from "./site/answering.ts";
import { withBrowser } from "./site/browser.ts";
import { give, useKey } from "./site/desk-steps.ts";
import { mouse } from "./site/hands.ts";
import { withRecordSite } from "./site/record-site.ts";
import { cellText, doingsOn, savedBy, savedRecord } from "./site/record-steps.ts";

// From page to page, and the command besides.
vi.setConfig({ testTimeout: 240_000 });

const quizFile = "modules/box/quiz.yaml";
const first = "questions:\n  - id: first";
const site = withRecordSite(changed(quizFile, first, `supervised: true\n${first}`));
const visitor = withBrowser(() => site.url("localhost"));

test("the desk can't mark it and says so; score marks the answers that it saves", async () => {
  const { quiz } = checkContent(site.contentDir).content.quizzes.get("box")!;
  const wrong = quiz.questions[0]!.id;
  const trainee = (await visitor.open("modules/box/quiz/index.html")).page;
  await trainee.getByLabel(/Number of the paper/).fill("K 17");
  await trainee.keyboard.press("Tab");
  for (const question of quiz.questions)
    await answerQuestion(trainee, question, question.id !== wrong, mouse);
  await trainee.getByRole("button", { name: "Close my answers" }).click();
  await trainee.getByText(/^Kept in your record/).waitFor();
  await doingsOn(trainee, site, site.url("localhost")).openRecord();
  await expect.poll(() => cellText(trainee, "Quiz")).toMatch(/^handed in/);
  const { text } = await savedRecord(trainee);

  const { page, troubles } = await visitor.open("desk/index.html");
  await useKey(page, "Ada");
  await give(page, "Open trainees’ files", text, "trainee.record.json");
  const note = page.getByText("The sitting was supervised and can’t be marked here");
  await note.waitFor();
  const name = "box-answers.json";
  expect(await note.innerText()).toContain(`score --quiz ${quizFile} --answers ${name}`);
  expect(await note.innerText()).toContain("(K 17)");
  expect(await page.getByLabel("Quiz, as marked with score, in percent").count()).toBe(1);
  const save = page.getByRole("button", { name: "Save the answers for score" });
  const saved = await savedBy(page, () => save.click());
  expect(saved.name).toBe(name);

  const file = join(site.contentDir, "..", name);
  writeFileSync(file, saved.text);
  const args = ["score", "--quiz", join(site.contentDir, quizFile), "--answers", file, "--json"];
  const { code, stdout, stderr } = await runTool(args);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  const scored = JSON.parse(stdout) as { questions: { id: string; score: number; max: number }[] };
  const missed = scored.questions.filter(({ score, max }) => score < max);
  expect(scored.questions).toHaveLength(quiz.questions.length);
  expect(missed.map(({ id }) => id)).toEqual([wrong]);
  expect(troubles).toEqual([]);
});
