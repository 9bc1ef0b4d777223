/** Kinds of question by mouse, by touch and by keys; a reload in the middle; one question at a time. */
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { QuestionKind, QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { centreOf, type Shape } from "../../src/engine/quiz/shape.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { pressByKey, tabTo } from "./site/keyboard.ts";
import { pageData, type SitePage, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true };
const quiz = sitePages().find((page) => page.kind === "quiz" && kindsOn(page).has("point"))!;
const { items } = pageData<QuizData>(quiz);

function kindsOn(page: SitePage): Set<QuestionKind> {
  return new Set(pageData<QuizData>(page).items.map(({ question }) => question.kind));
}

function ofKind<Kind extends QuestionKind>(kind: Kind): QuestionOf<Kind> {
  return items.find(({ question }) => question.kind === kind)!.question as unknown as QuestionOf<Kind>;
}

const rootOf = (page: Page, kind: QuestionKind): Locator =>
  page.locator(`[data-question="${ofKind(kind).id}"]`);
const checkOf = (root: Locator): Locator => root.getByRole("button", { name: "Check this answer" });
const chosenIn = (root: Locator): Promise<string> =>
  root.getByRole("radio", { checked: true }).locator("xpath=..").innerText();

/** Where on the page the middle of a place lies. */
async function spotOf(figure: Locator, shape: Shape): Promise<{ x: number; y: number }> {
  const { width, height } = (await figure.boundingBox())!;
  const { x, y } = centreOf(shape);
  return { x: (x / 100) * width, y: (y / 100) * height };
}

test("a place is pointed at by mouse, and found again in the list", async () => {
  const { page, troubles } = await visitor.open(quiz.path);
  const root = rootOf(page, "point");
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

test("on a phone it is done by touch, nothing is wider than the screen, and no rule of accessibility is broken", async () => {
  const { page, troubles } = await visitor.open(quiz.path, phone);
  const point = rootOf(page, "point");
  const right = ofKind("point").places.find((place) => place.right)!;
  await point.locator(".pointing").tap({ position: await spotOf(point.locator(".pointing"), right.shape) });
  await checkOf(point).tap();
  expect(await point.innerText()).toMatch(/Right\./);
  const sort = rootOf(page, "sort");
  for (const { text, group } of ofKind("sort").items) {
    const item = sort.getByRole("group", { name: text, exact: true });
    await item.getByText(ofKind("sort").groups[group]!, { exact: true }).tap();
  }
  await checkOf(sort).tap();
  expect(await sort.innerText()).toMatch(/Right\./);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("each of the written and placed kinds is answered by keys alone", async () => {
  const { page } = await visitor.open(quiz.path);
  const match = rootOf(page, "match");
  for (const [item, { choice }] of ofKind("match").items.entries()) {
    await tabTo(page, match.getByRole("combobox").nth(item));
    await page.keyboard.type(ofKind("match").choices[choice]!);
  }
  await pressByKey(page, checkOf(match));
  expect(await match.innerText()).toMatch(/Right\./);
  const text = rootOf(page, "text");
  await tabTo(page, text.getByRole("textbox"));
  await page.keyboard.type(` ${ofKind("text").answers[0]!.toUpperCase()} `);
  await pressByKey(page, checkOf(text));
  expect(await text.innerText()).toMatch(/Right\./);
  const point = rootOf(page, "point");
  const radios = point.getByRole("radio");
  await tabTo(page, radios.first());
  await page.keyboard.press("Space");
  const right = ofKind("point").places.find((place) => place.right)!.text;
  for (let moved = 0; moved < 10 && !(await chosenIn(point)).includes(right); moved++)
    await page.keyboard.press("ArrowDown");
  await pressByKey(page, checkOf(point));
  expect(await point.innerText()).toMatch(/Right\./);
});

test("groups are filled by keys alone", async () => {
  const { page } = await visitor.open(quiz.path);
  const sort = rootOf(page, "sort");
  const { items: sorted } = ofKind("sort");
  const shown = await sort.locator("[data-item]").evaluateAll((rows) => rows.map((row) => row.dataset.item));
  for (const item of shown.map(Number)) {
    const radios = sort.locator(`[data-item="${item}"]`).getByRole("radio");
    await tabTo(page, radios.first());
    await page.keyboard.press("Space");
    for (let moved = 0; moved < sorted[item]!.group; moved++) await page.keyboard.press("ArrowRight");
  }
  await pressByKey(page, checkOf(sort));
  expect(await sort.innerText()).toMatch(/Right\./);
});

test("a reload in the middle keeps answers, the case asked and the order shown", async () => {
  const { page } = await visitor.open(quiz.path);
  const [match, text, sort] = [rootOf(page, "match"), rootOf(page, "text"), rootOf(page, "sort")];
  const [point, worked] = [rootOf(page, "point"), rootOf(page, "worked")];
  await match.getByRole("combobox").first().selectOption("2");
  await text.getByRole("textbox").fill("half a wor");
  await sort.getByRole("radio").nth(1).check();
  await point.getByRole("radio").first().check();
  await worked.getByRole("textbox").fill("0,1");
  const look = async () => [
    await match.getByRole("combobox").first().inputValue(),
    await text.getByRole("textbox").inputValue(),
    await sort.innerText(),
    await sort.getByRole("radio", { checked: true }).count(),
    await chosenIn(point),
    await worked.innerText(),
    await worked.getByRole("textbox").inputValue(),
  ];
  const before = await look();
  expect(before[0]).toBe("2");
  await page.reload();
  expect(await look()).toEqual(before);
});

test("no reason and no answer in writing is to be read before a question is checked", async () => {
  const { page } = await visitor.open(quiz.path);
  const said = (await page.locator("main").innerText()).replace(/\s+/g, " ");
  for (const { question } of items) expect(said).not.toContain(question.why.trim().slice(0, 40));
  for (const { why } of ofKind("match").items) expect(said).not.toContain(why!);
  for (const { why } of ofKind("point").places) expect(said).not.toContain(why!);
  expect(await page.locator(".is-right, .is-wrong").count()).toBe(0);
});

test("one question at a time: a switch, the way on and back, and the place kept", async () => {
  const { page } = await visitor.open(quiz.path);
  const visible = () => page.locator(".question:visible").evaluateAll((all) => all.map(({ id }) => id));
  expect((await visible()).length).toBe(items.length);
  await page.getByLabel("One question at a time").check();
  expect(await visible()).toEqual(["question-1"]);
  await page.getByRole("button", { name: "Next question" }).click();
  await page.getByRole("button", { name: "Next question" }).click();
  await page.getByRole("button", { name: "Question before" }).click();
  expect(await visible()).toEqual(["question-2"]);
  expect(await page.getByText(`Question 2 of ${items.length}`).count()).toBe(1);
  await page.reload();
  expect(await visible()).toEqual(["question-2"]);
  await page.emulateMedia({ media: "print" });
  expect((await visible()).length).toBe(items.length);
});
