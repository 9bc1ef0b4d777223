import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { QuestionKind } from "../../src/engine/quiz/kinds.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import { answerQuestion, kindsAnswered, listIn, rootOf } from "./site/answering.ts";
import { orderOf } from "./site/arranging.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { mouse } from "./site/hands.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** The quiz with most kinds of questions, of those that ask all of them. */
const quiz = sitePages()
  .filter((page) => page.kind === "quiz" && pageData<QuizData>(page).paper === undefined)
  .toSorted((a, b) => kindsOf(pageData<QuizData>(b)).size - kindsOf(pageData<QuizData>(a)).size)[0]!;
const { items } = pageData<QuizData>(quiz);

function kindsOf(data: QuizData): Set<QuestionKind> {
  return new Set(data.items.map(({ question }) => question.kind));
}

async function answerAll(page: Page, right: boolean): Promise<void> {
  for (const { question } of items) await answerQuestion(page, question, right, mouse);
}

const placeOf = (page: Page, at: number): Locator => page.locator(`#question-${at + 1}`);

test("the demo asks questions of every kind", () => {
  const asked = sitePages()
    .filter(({ kind }) => kind === "quiz")
    .flatMap((page) => [...kindsOf(pageData<QuizData>(page))]);
  expect(new Set(asked)).toEqual(new Set(kindsAnswered));
});

test("right answers pass, a reload keeps the result, and a sitting can be begun again with all answers empty", async () => {
  const { page, troubles } = await visitor.open(quiz.path);
  await answerAll(page, true);
  await page.getByRole("button", { name: "Check my answers" }).click();
  const result = page.getByRole("heading", { level: 2, name: "Passed", exact: true });
  expect(await result.isVisible()).toBe(true);
  expect(await page.getByText("100 %").count()).toBeGreaterThan(0);
  await page.reload();
  await expect.poll(() => result.isVisible()).toBe(true);
  await page.getByRole("button", { name: "Sit again" }).first().click();
  expect(await page.getByRole("radio", { checked: true }).count()).toBe(0);
  expect(await page.getByRole("checkbox", { checked: true }).count()).toBe(0);
  expect(await result.count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("wrong answers do not pass: each is told, with its reason and what to read again", async () => {
  const { page, troubles } = await visitor.open(quiz.path);
  await answerAll(page, false);
  await page.getByRole("button", { name: "Check my answers" }).click();
  expect(await page.getByRole("heading", { level: 2, name: "Not passed yet" }).isVisible()).toBe(true);
  for (const [at, { question, see }] of items.entries()) {
    const said = await placeOf(page, at).innerText();
    expect(said, question.id).toMatch(/not right|partly right/i);
    expect(said, question.id).toContain(question.why.trim().slice(0, 30));
    if (question.kind === "arrange")
      expect(said, question.id).toMatch(/One right order:[\s\S]*makes? yours into it/);
    expect(await placeOf(page, at).getByRole("link", { name: see!.text }).getAttribute("href")).toBe(
      see!.href,
    );
  }
  expect(await page.getByRole("heading", { name: "Faults to go over" }).isVisible()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  await placeOf(page, 0).getByRole("link").click();
  await expect.poll(() => page.getByRole("heading", { level: 1 }).count()).toBe(1);
  expect(page.url()).not.toContain("/quiz/");
  expect(troubles).toEqual([]);
});

test("what is not answered is told; a question is checked alone, and a reload keeps answers and verdict", async () => {
  const { page } = await visitor.open(quiz.path);
  await page.getByRole("button", { name: "Check my answers" }).click();
  expect(await page.getByText(/Without an answer/).innerText()).toContain(`${items.length} questions`);
  expect(await page.getByRole("heading", { level: 2, name: "Not passed yet" }).count()).toBe(0);
  const at = items.findIndex(({ question }) => question.kind === "choose-one");
  const { question } = items[at]!;
  const check = placeOf(page, at).getByRole("button", { name: "Check this answer" });
  await check.click();
  expect(await placeOf(page, at).innerText()).toContain("Answer it first");
  await answerQuestion(page, question, false, mouse);
  await page.reload();
  expect(await placeOf(page, at).getByRole("radio", { checked: true }).count()).toBe(1);
  await check.click();
  expect(await placeOf(page, at).innerText()).toMatch(/Not right/);
  await page.reload();
  expect(await placeOf(page, at).innerText()).toMatch(/Not right/);
  expect(await placeOf(page, (at + 1) % items.length).innerText()).not.toMatch(/Not right|Right\./);
});

test("every quiz of the demo can be begun, and its paper has as many questions as it says, with the steps of its arrangements", async () => {
  for (const sitePage of sitePages().filter(({ kind }) => kind === "quiz")) {
    const { items: pool } = pageData<QuizData>(sitePage);
    const { page, troubles } = await visitor.open(sitePage.path);
    const asked = page.locator("[data-question]:visible");
    const said = Number(/(?:^|asks )(\d+) /.exec(await page.locator(".lead").innerText())?.[1]);
    expect(said).toBeGreaterThanOrEqual(10);
    expect(await asked.count()).toBe(said);
    for (const { question } of pool.filter(({ question: { kind } }) => kind === "arrange")) {
      const root = rootOf(page, question);
      if (!(await root.isVisible())) continue;
      expect((await orderOf(listIn(root))).length, question.id).toBeGreaterThan(3);
    }
    expect(troubles).toEqual([]);
    await page.context().close();
  }
});
