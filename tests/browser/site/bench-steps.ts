/** What tests of the bench view do again and again. */
import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import type { BenchData } from "../../../src/model/page-data.ts";
import { finger, type Hands, mouse } from "./hands.ts";
import { pageData, type SitePage, sitePages } from "./pages.ts";

export interface Device {
  readonly name: string;
  readonly options: BrowserContextOptions;
  readonly hands: Hands;
}

export const devices: readonly Device[] = [
  { name: "phone", options: { viewport: { width: 360, height: 740 }, hasTouch: true }, hands: finger },
  { name: "desktop", options: { viewport: { width: 1280, height: 900 } }, hands: mouse },
];

/** The bench view of a procedure in which several steps are followed by a wait. */
export const benchWithWaits = (): SitePage =>
  sitePages().find((page) => page.kind === "bench" && pageData<BenchData>(page).waits.length > 1)!;

export const done = (page: Page): Locator => page.getByRole("checkbox", { name: "Done", exact: true });
export const next = (page: Page): Locator => page.getByRole("button", { name: "Next", exact: true });
/** The step that is shown. */
export const card = (page: Page): Locator => page.locator(".step:not(.is-away)");
/** The line that says what was just done. */
export const said = (page: Page): Locator => page.locator(".bench-said").getByRole("status");
export const undo = (page: Page): Locator => page.getByRole("button", { name: "Undo", exact: true });

/** Ids of the steps, as they stand on the page. */
export const stepIds = (page: Page): Promise<string[]> =>
  page.locator(".step").evaluateAll((steps) => steps.map(({ id }) => id));

/** Goes to a card by its address, as a link on the page does. */
export async function goToCard(page: Page, id: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, id);
  await page.locator(`[id="${id}"]:not(.is-away)`).waitFor();
}
