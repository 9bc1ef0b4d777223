/**
 * What Chromium itself says of pages of a built site, the processor slowed down six times, as on a cheap phone: when it first
 * painted something, how long what one did waited until the page took it up, and until the next picture showed it.
 */
import { type Browser, chromium, type Page } from "playwright-core";
import { needChromium } from "../support/chromium.ts";
import { serveFolder } from "../support/static-server.ts";
import { moduleId } from "./generate.ts";
import { median, quantile, type Row } from "./row.ts";

const slowdown = 6;
const visits = 5;

/**
 * The ends of what is called "good" for Web Vitals (web.dev: First Contentful Paint, First Input Delay, Interaction to Next
 * Paint), which are given for the slowest quarter of visits; in ms.
 */
const good = { paint: 1800, delay: 100, shown: 200 } as const;

/** What the page's observers leave, by the names of the standards (Paint Timing, Event Timing). */
interface Figures {
  readonly paint: number;
  readonly delays: readonly number[];
  readonly durations: readonly number[];
}

interface Screen {
  readonly name: string;
  readonly path: string;
  /** Does what people do there; undefined where one only reads. */
  readonly act?: (page: Page) => Promise<void>;
}

const module = moduleId(0);

const screens: readonly Screen[] = [
  { name: "home page", path: "" },
  { name: "module page", path: `modules/${module}/` },
  { name: "quiz", path: `modules/${module}/quiz/`, act: answerAll },
  { name: "practice", path: `modules/${module}/practice/`, act: moveAll },
  { name: "search", path: "search/", act: typeAll },
];

export async function chromiumRows(site: string, programme: string): Promise<Row[]> {
  const server = await serveFolder(site, "/");
  const browser = await chromium.launch({
    executablePath: await needChromium(console.log),
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    const rows: Row[] = [];
    for (const screen of screens) {
      const figures: Figures[] = [];
      for (let visit = 0; visit < visits; visit++)
        figures.push(await visited(browser, server.url + screen.path, screen.act));
      rows.push(...rowsOf(`${programme}, processor ÷ ${slowdown}: ${screen.name}`, figures));
    }
    return rows;
  } finally {
    await browser.close();
    await server.close();
  }
}

function rowsOf(what: string, figures: readonly Figures[]): Row[] {
  const [delays, durations] = [
    figures.flatMap((each) => each.delays),
    figures.flatMap((each) => each.durations),
  ];
  const ms = (name: string, measured: number, budget: number): Row => ({
    what: `${what}, ${name}`,
    measured,
    unit: "ms",
    budget,
  });
  return [
    ms("first paint, median", median(figures.map(({ paint }) => paint)), good.paint),
    ...(delays.length === 0 ? [] : [ms("input delay, p95", quantile(delays, 0.95), good.delay)]),
    ...(durations.length === 0
      ? []
      : [ms("input until it is shown, p95", quantile(durations, 0.95), good.shown)]),
  ];
}

/** A first visit: nothing is kept from the one before. */
async function visited(
  browser: Browser,
  url: string,
  act: ((page: Page) => Promise<void>) | undefined,
): Promise<Figures> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 800 },
    serviceWorkers: "block",
  });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
    await page.addInitScript(observe);
    await page.goto(url, { waitUntil: "load" });
    await act?.(page);
    await page.waitForFunction(() => (globalThis as { measured?: Figures }).measured!.paint > 0);
    return await page.evaluate(() => (globalThis as { measured?: Figures }).measured!);
  } finally {
    await context.close();
  }
}

/** Runs in the page, before anything else of it. Events of one input share the time at which it was made. */
function observe(): void {
  const measured = { paint: 0, delays: [] as number[], durations: [] as number[] };
  (globalThis as { measured?: Figures }).measured = measured;
  new PerformanceObserver((list) => {
    for (const { name, startTime } of list.getEntries())
      if (name === "first-contentful-paint") measured.paint = startTime;
  }).observe({ type: "paint", buffered: true });
  const inputs = ["keydown", "pointerdown", "click", "input", "change"];
  new PerformanceObserver((list) => {
    for (const each of list.getEntries() as PerformanceEventTiming[]) {
      if (!inputs.includes(each.name)) continue;
      measured.delays.push(each.processingStart - each.startTime);
      measured.durations.push(each.duration);
    }
    // Chromium tells of no event shorter than 16 ms.
  }).observe({ type: "event", durationThreshold: 16, buffered: true } as PerformanceObserverInit);
}

async function answerAll(page: Page): Promise<void> {
  const choices = page.locator("[data-question]:visible input:is([type=radio], [type=checkbox])");
  await choices.first().waitFor();
  for (const choice of await choices.all()) await choice.press("Space");
  for (const field of await page.locator("[data-question]:visible input[type=text]").all())
    await field.pressSequentially("4 mm");
  await page.getByRole("button", { name: "Check my answers" }).click();
  await nextPicture(page);
}

async function moveAll(page: Page): Promise<void> {
  const rows = page
    .getByRole("list", { name: /your order/ })
    .first()
    .getByRole("listitem");
  await rows.first().waitFor();
  const handle = rows.first().locator("button, [tabindex='0']").first();
  await handle.focus();
  for (let moves = await rows.count(); moves > 1; moves--) await page.keyboard.press("Alt+ArrowDown");
  await page.getByRole("button", { name: "Check this order" }).first().click();
  await nextPicture(page);
}

async function typeAll(page: Page): Promise<void> {
  const field = page.getByRole("searchbox").first();
  await field.waitFor();
  await field.pressSequentially("ratchte spring", { delay: 120 });
  await nextPicture(page);
}

/** Chromium tells of an event once its picture has been shown. */
const nextPicture = (page: Page): Promise<unknown> =>
  page.evaluate(
    () =>
      new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100)))),
  );
