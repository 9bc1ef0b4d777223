/** The main screens, and what is done on each before the picture is taken. */
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
  { name: "drill", path: "modules/bench-drill/" },
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
  { name: "record", path: "record/", isWhole: true },
  { name: "desk", path: "desk/" },
  { name: "about", path: "about/", isWhole: true },
  { name: "poster", path: "poster/" },
];
