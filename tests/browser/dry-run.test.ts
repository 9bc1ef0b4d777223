import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { tryStep } from "../../src/engine/procedure/perform.ts";
import { performingGraph } from "../../src/engine/procedure/performing-graph.ts";
import type { DryRunData, DryRunStep } from "../../src/model/page-data.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, pressByKey, tabTo } from "./site/keyboard.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
const runs = sitePages()
  .filter(({ kind }) => kind === "dry-run")
  .map((page) => ({ ...page, data: pageData<DryRunData>(page) }));
const byLength = runs.toSorted((a, b) => a.data.steps.length - b.data.steps.length);
const [short, long] = [byLength[0]!, byLength.at(-1)!];

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true };

const slip = (page: Page, { title }: DryRunStep): Locator =>
  page.getByRole("button", { name: title, exact: true });
const slipTitles = (page: Page): Promise<string[]> =>
  page
    .getByRole("region", { name: /^Still to do/ })
    .getByRole("button")
    .allTextContents();
const doneTitles = (page: Page): Promise<string[]> =>
  page.getByRole("region", { name: "Done", exact: true }).getByRole("listitem").allTextContents();
const announced = (page: Page) => page.locator("[aria-live=polite]");

/** Goes from the slip that has the focus to another one by Tab, and chooses it. */
async function chooseByKey(page: Page, step: DryRunStep): Promise<void> {
  const titles = await slipTitles(page);
  const from = titles.indexOf((await page.locator(":focus").textContent()) ?? "");
  const way = titles.indexOf(step.title) - from;
  await tabTo(page, slip(page, step), way < 0 ? "Shift+Tab" : "Tab");
  await page.keyboard.press("Enter");
}

/** A step with this verdict when the first `done` steps of the written order are done. */
function stepThatIs(kind: "refused" | "stopped", { steps, precedence }: DryRunData, done: number) {
  const graph = performingGraph(precedence);
  const before = new Set(steps.slice(0, done).map(({ id }) => id));
  return steps
    .slice(done)
    .map((step) => ({ step, verdict: tryStep(graph, before, step.id) }))
    .find(({ verdict }) => verdict.kind === kind);
}

/** The first place in a dry run of the demo where a step is refused without being critical. */
const refusal = byLength
  .flatMap(({ path, data }) =>
    data.steps.map((_, done) => ({ path, data, done, ...stepThatIs("refused", data, done) })),
  )
  .find(({ step }) => step !== undefined)!;

async function chooseFirst(page: Page, { steps }: DryRunData, count: number): Promise<void> {
  await tabTo(
    page,
    page
      .getByRole("region", { name: /^Still to do/ })
      .getByRole("button")
      .first(),
  );
  for (const step of steps.slice(0, count)) await chooseByKey(page, step);
}

beforeAll(() => {
  expect(refusal.step).toBeDefined();
});

test("a whole module by keyboard alone: each step announced, each tray that of the operation sheet", async () => {
  const { page, troubles } = await visitor.open(short.path);
  const sheet = (await visitor.open(short.path.replace("dry-run/", ""))).page;
  const trays = await sheet.locator(".step .tray dl").allTextContents();
  const { steps } = short.data;
  expect(trays).toHaveLength(steps.length);
  expect((await slipTitles(page)).toSorted()).toEqual(steps.map(({ title }) => title).toSorted());
  await tabTo(
    page,
    page
      .getByRole("region", { name: /^Still to do/ })
      .getByRole("button")
      .first(),
  );
  for (const [at, step] of steps.entries()) {
    await chooseByKey(page, step);
    expect(joined((await page.locator(".run .tray dl").textContent()) ?? "")).toBe(joined(trays[at]!));
    expect((await doneTitles(page)).at(-1)).toBe(step.title);
    if (at === 0)
      await expect.poll(() => announced(page).textContent()).toContain(`Step 1 done: ${step.title}`);
  }
  const end = page.getByRole("heading", { name: "Done without a refusal" });
  expect(await hasFocus(end)).toBe(true);
  expect(await page.getByText("Your order is that of the operation sheet.").isVisible()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("a step that can't be done yet is refused with its reason, and keeps the focus", async () => {
  const { page, troubles } = await visitor.open(refusal.path);
  await chooseFirst(page, refusal.data, refusal.done);
  const step = refusal.step!;
  const before = [await slipTitles(page), await doneTitles(page)];
  await chooseByKey(page, step);
  expect(await hasFocus(slip(page, step))).toBe(true);
  expect([await slipTitles(page), await doneTitles(page)]).toEqual(before);
  const said = page.getByRole("listitem").filter({ has: slip(page, step) });
  expect(await said.textContent()).toContain("Not yet.");
  const [pair] = refusal.verdict!.broken;
  const first = refusal.data.steps.find(({ id }) => id === pair!.first)!;
  expect(await said.textContent()).toContain(`“${first.title}” comes first: ${pair!.because[0]}`);
  await expect.poll(() => announced(page).textContent()).toContain(`Not yet: ${step.title}.`);
  const described = await slip(page, step).getAttribute("aria-describedby");
  expect(await page.locator(`#${described}`).textContent()).toContain("Not yet.");
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("a critical pair stops the run, also after a reload; one goes on from before the step", async () => {
  const { page, troubles } = await visitor.open(long.path);
  const { step, verdict } = stepThatIs("stopped", long.data, 1)!;
  await chooseFirst(page, long.data, 1);
  await chooseByKey(page, step);
  expect(await hasFocus(page.getByRole("heading", { name: "Stop", exact: true }))).toBe(true);
  const stop = page.getByRole("region", { name: "Stop", exact: true });
  const reasons = verdict.critical.map(({ because }) => because[0]!);
  const told = (await stop.textContent()) ?? "";
  expect(reasons.filter((reason) => told.includes(reason))).not.toEqual([]);
  const hazards = long.data.hazards.filter(({ id }) => step.hazards.includes(id));
  for (const { title, consequence } of hazards) {
    expect(await stop.getByRole("link", { name: title }).isVisible()).toBe(true);
    expect(told).toContain(consequence);
  }
  for (const { result } of step.mistakes) expect(told.toLowerCase()).toContain(result.toLowerCase());
  expect(await slipTitles(page)).toEqual([]);
  expect(await axeViolations(page)).toEqual([]);
  await page.reload();
  expect(await stop.isVisible()).toBe(true);
  await pressByKey(page, page.getByRole("button", { name: "Go on from before this step" }));
  expect(await hasFocus(slip(page, step))).toBe(true);
  expect(await doneTitles(page)).toEqual([long.data.steps[0]!.title]);
  expect(troubles).toEqual([]);
});

test("what went wrong is summed up at the end, with the steps to read again", async () => {
  const { page } = await visitor.open(refusal.path);
  await chooseFirst(page, refusal.data, refusal.done);
  const step = refusal.step!;
  await chooseByKey(page, step);
  await chooseByKey(page, step);
  for (const next of refusal.data.steps.slice(refusal.done)) await chooseByKey(page, next);
  expect(await page.getByText("On the way: 2 tries came too early").isVisible()).toBe(true);
  const link = page.getByRole("main").getByRole("link", { name: step.title });
  expect(await page.getByText(`${step.title}, twice`).isVisible()).toBe(true);
  await link.click();
  await page.waitForURL(new RegExp(`#${step.id}$`));
  expect(await page.getByRole("heading", { name: step.title }).isVisible()).toBe(true);
});

test("a reload in the middle keeps the steps done, the slips in their order and the tray; starting again asks first", async () => {
  const { page, troubles } = await visitor.open(long.path);
  await chooseFirst(page, long.data, 3);
  const all = async () => [
    await slipTitles(page),
    await doneTitles(page),
    await page.locator(".run .tray").textContent(),
  ];
  const before = await all();
  expect(before[1]).toHaveLength(3);
  await page.reload();
  expect(await all()).toEqual(before);
  const again = page.getByRole("button", { name: "Start again" });
  await pressByKey(page, again);
  const question = page.getByText("This clears the 3 steps that you have done.");
  expect(await hasFocus(question)).toBe(true);
  await pressByKey(page, page.getByRole("button", { name: "No, keep them" }));
  expect(await hasFocus(again)).toBe(true);
  expect(await all()).toEqual(before);
  await page.keyboard.press("Enter");
  await pressByKey(page, page.getByRole("button", { name: "Yes, clear them" }));
  expect(await doneTitles(page)).toEqual([]);
  expect(await slipTitles(page)).toHaveLength(long.data.steps.length);
  expect(troubles).toEqual([]);
});

test("by touch on a narrow screen: the line of the tray stays in sight, and opens", async () => {
  const { page, troubles } = await visitor.open(long.path, phone);
  const [first, second] = long.data.steps;
  await slip(page, first!).tap();
  // No double tap, should the second have come into the place of the first.
  await expect.poll(() => announced(page).textContent()).toContain("Step 1 done");
  await page.waitForTimeout(600);
  await slip(page, second!).tap();
  expect(await doneTitles(page)).toEqual([first!.title, second!.title]);
  const last = page
    .getByRole("region", { name: /^Still to do/ })
    .getByRole("button")
    .last();
  await last.scrollIntoViewIfNeeded();
  const line = page.getByText(`2 of ${long.data.steps.length} done`);
  const box = (await line.boundingBox())!;
  expect(box.y).toBeGreaterThanOrEqual(0);
  expect(box.y + box.height).toBeLessThan(120);
  const open = page.getByRole("button", { name: "Tray", exact: true });
  expect(await page.getByText("On the tray after your step 2").isVisible()).toBe(false);
  // WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 CSS pixels.
  for (const target of [open, last]) {
    const { width, height } = (await target.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  }
  await open.tap();
  expect(await page.getByText("On the tray after your step 2").isVisible()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("a double press chooses one slip, not also the one that comes into its place", async () => {
  const { page } = await visitor.open(long.path);
  await slip(page, long.data.steps[0]!).dblclick();
  expect(await doneTitles(page)).toEqual([long.data.steps[0]!.title]);
  expect(await page.getByText("Not yet.").count()).toBe(0);
  expect(await page.getByRole("heading", { name: "Stop", exact: true }).count()).toBe(0);
});

test("on paper: what is done, what is not, and the tray, without the buttons about it", async () => {
  const { page } = await visitor.open(long.path, phone);
  await slip(page, long.data.steps[0]!).tap();
  await page.emulateMedia({ media: "print" });
  expect(await page.getByText("On the tray after your step 1").isVisible()).toBe(true);
  expect(await slip(page, long.data.steps[1]!).isVisible()).toBe(true);
  for (const name of ["Start again", "Tray"])
    expect(await page.getByRole("button", { name, exact: true }).count()).toBe(0);
});

test("without the script there are slips to cut out, in an order that is not the written one", async () => {
  const { page } = await visitor.open(long.path, { javaScriptEnabled: false });
  const titles = await page.getByRole("main").getByRole("listitem").allInnerTexts();
  const written = long.data.steps.map(({ title }) => title);
  expect(titles.toSorted()).toEqual(written.toSorted());
  expect(titles).not.toEqual(written);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByText("Cut the slips out").isVisible()).toBe(true);
});

const joined = (text: string): string => text.replaceAll(/\s+/g, "");
