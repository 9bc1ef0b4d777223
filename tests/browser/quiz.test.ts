import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Question, QuestionKind } from "../../src/engine/quiz/kinds.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import { arrangeByKeys, orderOf } from "./site/arranging.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** The quiz with most kinds of questions. */
const quiz = sitePages()
  .filter(({ kind }) => kind === "quiz")
  .toSorted((a, b) => kindsOf(pageData<QuizData>(b)).size - kindsOf(pageData<QuizData>(a)).size)[0]!;
const { items } = pageData<QuizData>(quiz);

function kindsOf(data: QuizData): Set<QuestionKind> {
  return new Set(data.items.map(({ question }) => question.kind));
}

type Answer = (field: Locator, question: Question, right: boolean) => Promise<void>;

/** How each kind of question is answered, right or wrong. */
const answers: { readonly [Kind in QuestionKind]: Answer } = {
  "choose-one": async (field, question, right) => {
    if (question.kind !== "choose-one") return;
    await field
      .getByRole("radio", {
        name: question.options.find((option) => option.right === right)!.text,
        exact: true,
      })
      .check();
  },
  "choose-several": async (field, question, right) => {
    if (question.kind !== "choose-several") return;
    for (const option of question.options.filter((each) => each.right === right)) {
      await field.getByRole("checkbox", { name: option.text, exact: true }).check();
    }
  },
  number: async (field, question, right) => {
    if (question.kind !== "number") return;
    await field
      .getByRole("textbox")
      .fill(String(right ? question.answer.amount : question.answer.amount * 3 + 7));
  },
  arrange: async (field, question, right) => {
    if (question.kind !== "arrange") return;
    const titles = question.steps.map(({ title }) => title);
    await arrangeByKeys(
      field.page(),
      field.getByRole("list").filter({ has: field.page().getByRole("button", { name: /^Up: / }) }),
      right ? titles : titles.toReversed(),
    );
  },
  match: async (field, question, right) => {
    if (question.kind !== "match") return;
    const { length } = question.items;
    for (const [item, { text, choice }] of question.items.entries()) {
      const label = question.choices[right ? choice : (item + 1) % length]!;
      await field.getByLabel(text, { exact: true }).selectOption({ label });
    }
  },
  text: async (field, question, right) => {
    if (question.kind !== "text") return;
    await field.getByRole("textbox").fill(right ? question.answers[0]!.toUpperCase() : "something else");
  },
  point: async (field, question, right) => {
    if (question.kind !== "point") return;
    const place = question.places.find((each) => each.right === right)!;
    await field.getByRole("radio", { name: place.text, exact: true }).check();
  },
  sort: async (field, question, right) => {
    if (question.kind !== "sort") return;
    for (const { text, group } of question.items) {
      const place = right ? group : (group + 1) % question.groups.length;
      await field
        .getByRole("group", { name: text, exact: true })
        .getByRole("radio", { name: question.groups[place]!, exact: true })
        .check();
    }
  },
  worked: async (field, question, right) => {
    if (question.kind !== "worked") return;
    const asked = (await field.locator(".question-ask").innerText()).replace(/\s+/g, " ");
    const { answer } = question.cases.find(({ ask }) => ask.replace(/\s+/g, " ").trim() === asked)!;
    await field.getByRole("textbox").fill(String(right ? answer.amount : answer.amount * 3 + 7));
  },
};

/** Found by its id, for a worked question asks another case each time. */
const fieldOf = (page: Page, { id }: Question): Locator =>
  page.locator(`[data-question="${id}"] fieldset`).first();

async function answerAll(page: Page, right: boolean): Promise<void> {
  for (const { question } of items) await answers[question.kind](fieldOf(page, question), question, right);
}

const placeOf = (page: Page, at: number): Locator => page.locator(`#question-${at + 1}`);

test("the demo asks questions of every kind", () => {
  const asked = sitePages()
    .filter(({ kind }) => kind === "quiz")
    .flatMap((page) => [...kindsOf(pageData<QuizData>(page))]);
  expect(new Set(asked)).toEqual(new Set(Object.keys(answers)));
});

test("right answers pass, and a reload keeps the result", async () => {
  const { page, troubles } = await visitor.open(quiz.path);
  await answerAll(page, true);
  await page.getByRole("button", { name: "Check my answers" }).click();
  const result = page.getByRole("heading", { level: 2, name: "Passed", exact: true });
  expect(await result.isVisible()).toBe(true);
  expect(await page.getByText("100 %").count()).toBeGreaterThan(0);
  await page.reload();
  expect(await result.isVisible()).toBe(true);
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

test("a question is checked alone, and a reload keeps answers and verdict", async () => {
  const { page } = await visitor.open(quiz.path);
  const at = items.findIndex(({ question }) => question.kind === "choose-one");
  const { question } = items[at]!;
  const check = placeOf(page, at).getByRole("button", { name: "Check this answer" });
  await check.click();
  expect(await placeOf(page, at).innerText()).toContain("Answer it first");
  await answers["choose-one"](fieldOf(page, question), question, false);
  await page.reload();
  expect(await placeOf(page, at).getByRole("radio", { checked: true }).count()).toBe(1);
  await check.click();
  expect(await placeOf(page, at).innerText()).toMatch(/Not right/);
  await page.reload();
  expect(await placeOf(page, at).innerText()).toMatch(/Not right/);
  expect(await placeOf(page, (at + 1) % items.length).innerText()).not.toMatch(/Not right|Right\./);
});

test("a sitting can be begun again, with all answers empty", async () => {
  const { page } = await visitor.open(quiz.path);
  await answerAll(page, true);
  await page.getByRole("button", { name: "Check my answers" }).click();
  await page.getByRole("button", { name: "Sit again" }).first().click();
  expect(await page.getByRole("radio", { checked: true }).count()).toBe(0);
  expect(await page.getByRole("checkbox", { checked: true }).count()).toBe(0);
  expect(await page.getByRole("heading", { level: 2, name: "Passed", exact: true }).count()).toBe(0);
});

test("what is not answered is told before the quiz is marked", async () => {
  const { page } = await visitor.open(quiz.path);
  await page.getByRole("button", { name: "Check my answers" }).click();
  expect(await page.getByText(/Without an answer/).innerText()).toContain(`${items.length} questions`);
  expect(await page.getByRole("heading", { level: 2, name: "Not passed yet" }).count()).toBe(0);
});

test("every quiz of the demo can be begun, with the steps of its arrangements", async () => {
  for (const sitePage of sitePages().filter(({ kind }) => kind === "quiz")) {
    const arranged = pageData<QuizData>(sitePage)
      .items.map(({ question }) => question)
      .filter(({ kind }) => kind === "arrange");
    const { page, troubles } = await visitor.open(sitePage.path);
    for (const question of arranged)
      expect((await orderOf(fieldOf(page, question))).length, question.id).toBeGreaterThan(3);
    expect(troubles).toEqual([]);
    await page.context().close();
  }
});
