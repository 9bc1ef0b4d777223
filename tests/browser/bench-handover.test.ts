import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { encode } from "uqr";
import { describe, expect, inject, test } from "vitest";
import { linkOf } from "../../src/browser/bench/handover/link.ts";
import { beginning } from "../../src/browser/bench/place.ts";
import { pathOf } from "../../src/browser/evening/qr.ts";
import type { BenchData } from "../../src/model/page-data.ts";
import { axeViolations } from "./site/axe.ts";
import {
  benchWithWaits,
  card,
  devices,
  done,
  goToCard,
  next,
  said,
  stepIds,
  undo,
} from "./site/bench-steps.ts";
import { withBrowser } from "./site/browser.ts";
import { pageData } from "./site/pages.ts";

/** Several loads of a page in one test, on a machine that has much else to do; milliseconds. */
const patience = { timeout: 180_000 };
const visitor = withBrowser();
const fromDisk = withBrowser(`${pathToFileURL(inject("siteDir")).href}/`);
const bench = benchWithWaits();
const data = pageData<BenchData>(bench);
const clock = /at (\S+ \S+ \S+,? )?\d\d:\d\d/;

const panel = (page: Page) => page.getByRole("dialog", { name: "Hand over the place" });
const question = (page: Page) => page.getByRole("dialog", { name: "Take over this place?" });
const refusal = (page: Page) => page.getByRole("dialog", { name: "The place is not taken over" });
const linkIn = (page: Page) => panel(page).getByLabel("Link", { exact: true }).inputValue();

/** Where a link leads, below the site's address. */
const below = (link: string): string => bench.path + link.slice(link.indexOf("#"));

async function handOver(page: Page): Promise<string> {
  await page.getByRole("button", { name: "Hand over to another device" }).click();
  return linkIn(page);
}

describe.each(devices)("on a $name", ({ options, hands }) => {
  test("a place goes to another device, is asked for once", patience, async () => {
    const one = await visitor.open(bench.path, options);
    await hands.press(next(one.page));
    await hands.tick(done(one.page));
    const wait = data.waits[0]!;
    await goToCard(one.page, wait.step);
    await hands.press(card(one.page).getByRole("button", { name: /^Start/ }));
    const link = await handOver(one.page);
    expect(link).toContain(`=1.${data.module}.${data.revision}.`);
    expect(await axeViolations(one.page)).toEqual([]);
    const number = (await stepIds(one.page)).indexOf(wait.step) + 1;

    const two = await visitor.open(bench.path, options);
    await hands.press(next(two.page));
    await two.page.goto(new URL(below(link), inject("siteUrl")).href);
    const words = await question(two.page).textContent();
    expect(words).toMatch(clock);
    expect(words).toContain("Taken from another device");
    expect(words).toMatch(new RegExp(`: step ${number} of \\d+, 1 ticked off, 1 wait\\.`));
    expect(words).toMatch(/replaces what is on this device: step 1 of \d+, 0 ticked off\./);
    expect(await axeViolations(two.page)).toEqual([]);
    await hands.press(question(two.page).getByRole("button", { name: "No, keep mine" }));
    await two.page.getByText(/Step 1 of \d+ · 0 ticked off/).waitFor();
    await two.page.reload();
    expect(await question(two.page).count()).toBe(0);

    await two.page.goto(new URL(below(link), inject("siteUrl")).href);
    await hands.press(question(two.page).getByRole("button", { name: "Yes, take over" }));
    await two.page.getByText(new RegExp(`Step ${number} of \\d+ · 1 ticked off`)).waitFor();
    expect(await two.page.locator(".waits-strip").textContent()).toContain(`after step ${number}:`);
    expect(await said(two.page).textContent()).toBe("The place is taken over.");
    await two.page.reload();
    expect(await question(two.page).count()).toBe(0);
    await two.page.getByText(new RegExp(`Step ${number} of \\d+ · 1 ticked off`)).waitFor();
    expect([...one.troubles, ...two.troubles]).toEqual([]);
  });

  test("taking over can be taken back", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await hands.tick(done(page));
    const steps = await stepIds(page);
    const sheet = { ...data, steps, cards: ["s_before", ...steps, "s_after"] };
    await goToCard(page, steps[0]!);
    const link = linkOf(page.url(), beginning(steps[4]!), sheet, Date.now());
    await page.goto(link);
    await hands.press(question(page).getByRole("button", { name: "Yes, take over" }));
    await page.getByText(/Step 5 of \d+ · 0 ticked off/).waitFor();
    await hands.press(undo(page));
    await page.getByText(/Step 1 of \d+ · 1 ticked off/).waitFor();
    expect(await done(page).isChecked()).toBe(true);
  });

  test("a link of another revision, of another module or with a piece missing is refused with the reason", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    const steps = await stepIds(page);
    const sheet = { ...data, steps, cards: ["s_before", ...steps, "s_after"] };
    const place = beginning(steps[3]!);
    const linkWith = (change: object) => linkOf(page.url(), place, { ...sheet, ...change }, Date.now());
    const refused: readonly (readonly [string, RegExp])[] = [
      [
        linkWith({ revision: data.revision + 1 }),
        /revision \d+, and this page is revision \d+: its steps may differ/,
      ],
      [linkWith({ module: "elsewhere" }), /another procedure, “elsewhere”/],
      [linkWith({ steps: [...steps].reverse() }), /different steps under the same revision/],
      [linkWith({}).slice(0, -3), /The link is not whole/],
      [linkWith({}).replace("=1.", "=2."), /another edition of this page \(2\)/],
    ];
    for (const [link, words] of refused) {
      await page.goto(link);
      await expect.poll(() => refusal(page).textContent()).toMatch(words);
      await hands.press(refusal(page).getByRole("button", { name: "Go on with what is here" }));
      await page.getByText(/Step 1 of \d+/).waitFor();
    }
  });
});

test("the code is that of the link", async () => {
  const { page } = await visitor.open(bench.path);
  await page.keyboard.press("ArrowRight");
  const link = await handOver(page);
  const drawn = await panel(page)
    .getByRole("img", { name: "Code of the link" })
    .locator("path")
    .getAttribute("d");
  expect(drawn).toBe(pathOf(encode(link, { ecc: "M", border: 4 }).data));
});

test("the link is copied, and the panel says what it carries", async () => {
  const { page } = await visitor.open(bench.path, { permissions: ["clipboard-read", "clipboard-write"] });
  await page.keyboard.press("ArrowRight");
  const link = await handOver(page);
  expect(await panel(page).textContent()).toMatch(/At \d\d:\d\d: step 1 of \d+, 0 ticked off\./);
  await panel(page).getByRole("button", { name: "Copy the link" }).click();
  await panel(page).getByText("Copied.").waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);
});

test("from disk it says where the link works", async () => {
  const { page, troubles } = await fromDisk.open(bench.file);
  const link = await handOver(page);
  expect(link).toMatch(/^file:/);
  await panel(page)
    .getByText(/works only where the other device has the site/)
    .waitFor();
  expect(troubles).toEqual([]);
});
