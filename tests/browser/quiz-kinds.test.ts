/** Each kind of question by mouse, by touch and by keys, with a reload in the middle; one question at a time. */
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { QuestionKind, QuestionOf } from "../../src/engine/quiz/kinds.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import { answerQuestion, kindsAnswered, rootOf } from "./site/answering.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { finger, type Hands, keysOf, mouse, spotOf } from "./site/hands.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** One that asks all its questions, of each kind. */
const quiz = sitePages().find((page) => page.kind === "quiz" && asksEachKind(pageData<QuizData>(page)))!;
const { items } = pageData<QuizData>(quiz);

function asksEachKind({ paper, items: asked }: QuizData): boolean {
  const kinds = new Set(asked.map(({ question }) => question.kind));
  return paper === undefined && kindsAnswered.every((kind) => kinds.has(kind));
}

function ofKind<Kind extends QuestionKind>(kind: Kind): QuestionOf<Kind> {
  return items.find(({ question }) => question.kind === kind)!.question as unknown as QuestionOf<Kind>;
}

const checkOf = (root: Locator): Locator => root.getByRole("button", { name: "Check this answer" });
const chosenIn = (root: Locator): Promise<string> =>
  root.getByRole("radio", { checked: true }).locator("xpath=..").innerText();
/** What stands there: questions, options in their order, what was put in order, what was chosen and written. */
const sheetOf = (page: Page): Promise<string> =>
  page.locator("form").evaluate((form: HTMLFormElement) => {
    const fields = [...form.querySelectorAll<HTMLInputElement | HTMLSelectElement>("input, select")];
    const answer = (field: HTMLInputElement | HTMLSelectElement) =>
      "checked" in field && field.type !== "text" ? String(field.checked) : field.value;
    return [form.innerText, ...fields.map((field) => `${field.name}: ${answer(field)}`)].join("\n");
  });

const ways: readonly { way: string; width: number; hasTouch: boolean; hands: (page: Page) => Hands }[] = [
  { way: "mouse", width: 1280, hasTouch: false, hands: () => mouse },
  { way: "touch on a phone", width: 320, hasTouch: true, hands: () => finger },
  { way: "keys alone", width: 768, hasTouch: false, hands: keysOf },
];

test.each(ways)(
  "each kind is answered by $way; a reload in the middle loses nothing; axe finds no fault",
  async ({ width, hasTouch, hands: handsOn }) => {
    const { page, troubles } = await visitor.open(quiz.path, { viewport: { width, height: 800 }, hasTouch });
    const hands = handsOn(page);
    // In the order of the page, for keys go down it.
    const asked = items.map(({ question }) => question).filter((one) => ofKind(one.kind) === one);
    expect(asked).toHaveLength(kindsAnswered.length);
    for (const question of asked) await answerQuestion(page, question, true, hands);
    const before = await sheetOf(page);
    await page.reload();
    await expect.poll(() => sheetOf(page)).toBe(before);
    expect(await page.locator(".is-right, .is-wrong").count()).toBe(0);
    for (const question of asked) {
      const root = rootOf(page, question);
      await hands.press(checkOf(root));
      expect(await root.locator(".feedback").innerText(), question.kind).toMatch(/^Right\./);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(await axeViolations(page)).toEqual([]);
    expect(troubles).toEqual([]);
  },
  180_000,
);

test("a place is pointed at by mouse, and found again in the list", async () => {
  const { page, troubles } = await visitor.open(quiz.path);
  const root = rootOf(page, ofKind("point"));
  const figure = root.locator(".pointing");
  for (const { text, shape } of ofKind("point").places) {
    await figure.click({ position: await spotOf(figure, shape) });
    expect(await chosenIn(root)).toContain(text);
    expect(await root.getByRole("status").innerText()).toContain(text);
    expect(await root.locator(".pointing-mark").isVisible()).toBe(true);
  }
  await figure.click({ position: { x: 2, y: 2 } });
  expect(await root.getByRole("status").innerText()).toMatch(/No place of the list/);
  expect(troubles).toEqual([]);
});

test("a reload keeps what is half done, and nothing that answers is to be read before a question is checked", async () => {
  const { page } = await visitor.open(quiz.path);
  const said = (await page.locator("main").innerText()).replace(/\s+/g, " ");
  for (const { question } of items) expect(said).not.toContain(question.why.trim().slice(0, 40));
  for (const { why } of ofKind("match").items) expect(said).not.toContain(why!);
  for (const { why } of ofKind("point").places) expect(said).not.toContain(why!);
  expect(await page.locator(".is-right, .is-wrong").count()).toBe(0);
  const [match, text, sort] = [
    rootOf(page, ofKind("match")),
    rootOf(page, ofKind("text")),
    rootOf(page, ofKind("sort")),
  ];
  await match.getByRole("combobox").first().selectOption("2");
  await text.getByRole("textbox").fill("half a wor");
  await sort.getByRole("radio").nth(1).check();
  const look = async () => [
    await match.getByRole("combobox").first().inputValue(),
    await text.getByRole("textbox").inputValue(),
    await sort.getByRole("radio", { checked: true }).count(),
  ];
  expect(await look()).toEqual(["2", "half a wor", 1]);
  await page.reload();
  await expect.poll(look).toEqual(["2", "half a wor", 1]);
});

test("one question at a time: a switch, the way on and back, the place kept; on paper all of them, to be written on", async () => {
  const { page } = await visitor.open(quiz.path);
  const visible = () => page.locator(".question:visible").evaluateAll((all) => all.map(({ id }) => id));
  const next = page.getByRole("button", { name: "Next question" });
  expect((await visible()).length).toBe(items.length);
  expect(await next.isVisible()).toBe(false);
  await page.getByLabel("One question at a time").check();
  expect(await visible()).toEqual(["question-1"]);
  await next.click();
  await next.click();
  await page.getByRole("button", { name: "Question before" }).click();
  expect(await visible()).toEqual(["question-2"]);
  expect(await page.getByText(`Question 2 of ${items.length}`).count()).toBe(1);
  await page.reload();
  await expect.poll(visible).toEqual(["question-2"]);
  await page.emulateMedia({ media: "print" });
  expect((await visible()).length).toBe(items.length);
  expect(await page.locator(".paper-head").isVisible()).toBe(true);
  const places = page.locator(".pairs .paper-number:visible");
  const pairs = await places.count();
  expect(pairs).toBeGreaterThan(0);
  const match = rootOf(page, ofKind("match"));
  await page.emulateMedia({ media: "screen" });
  await page.getByLabel("One question at a time").uncheck();
  await match.getByRole("combobox").first().selectOption("1");
  await page.emulateMedia({ media: "print" });
  expect(await places.count()).toBe(pairs - 1);
  expect(await match.locator(".pair-chosen").first().innerText()).toBe(ofKind("match").choices[1]);
});
