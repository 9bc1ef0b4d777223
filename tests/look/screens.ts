/** A screen of each kind, and what is done on each before the picture is taken. */
import type { Page } from "playwright-core";

export interface Screen {
  readonly name: string;
  /** Below the site's address. */
  readonly path: string;
  readonly act?: (page: Page) => Promise<unknown>;
  /** The whole page, not what stands in the window alone. */
  readonly isWhole?: boolean;
}

const motor = "modules/spring-motor/";

export const screens: readonly Screen[] = [
  { name: "home", path: "", isWhole: true },
  { name: "modules", path: "modules/", isWhole: true },
  { name: "route", path: "route/", isWhole: true },
  { name: "sheet", path: motor },
  { name: "sheet-step", path: `${motor}#let-down` },
  { name: "order", path: `${motor}order/` },
  { name: "bench", path: `${motor}bench/` },
  { name: "bench-step", path: `${motor}bench/#let-down` },
  { name: "practice", path: `${motor}practice/` },
  { name: "dry-run", path: `${motor}dry-run/` },
  { name: "quiz", path: `${motor}quiz/` },
  { name: "paper", path: `${motor}paper/` },
  { name: "key", path: `${motor}quiz/key/` },
  { name: "drill", path: "modules/bench-drill/" },
  { name: "foundation", path: "modules/inspection-and-measuring/" },
  { name: "tools", path: "tools/" },
  { name: "substances", path: "substances/" },
  { name: "tool", path: "tools/spring-hook/", isWhole: true },
  { name: "substance", path: "substances/white-spirit/", isWhole: true },
  { name: "hazards", path: "hazards/" },
  {
    name: "search",
    path: "search/",
    act: async (page) => {
      await page.getByRole("searchbox").fill("governor spring");
      await page.locator("main a[href*='modules']").first().waitFor();
    },
  },
  { name: "sums", path: "sums/" },
  { name: "threads", path: "sums/threads/" },
  { name: "formulas", path: "sums/formulas/" },
  { name: "record", path: "record/", isWhole: true },
  { name: "desk", path: "desk/" },
  { name: "evening", path: "desk/evening/" },
  { name: "check", path: "check/" },
  { name: "faults", path: "faults/" },
  { name: "authors", path: "authors/" },
  { name: "away", path: "away/" },
  { name: "about", path: "about/", isWhole: true },
  { name: "poster", path: "poster/" },
];
