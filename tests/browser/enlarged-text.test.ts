/** Text at twice its size, as a person's own style sets it, in a window that stays as wide: WCAG 2.2, 1.4.4 and 1.4.10. */
import { expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { pageOfEachKind } from "./site/pages.ts";

const visitor = withBrowser();

/** Sentences that have less room than a line of them needs to be read: a few letters. */
function squeezed(): string[] {
  const fewest = 4;
  return [...document.querySelectorAll<HTMLElement>("main :is(p, li, dd)")]
    .filter(
      (each) => each.checkVisibility() && getComputedStyle(each).clipPath === "none" && each.clientWidth > 1,
    )
    .filter(({ innerText }) => innerText.length > 40)
    .filter((each) => each.clientWidth < fewest * Number.parseFloat(getComputedStyle(each).fontSize))
    .map(({ innerText, clientWidth }) => `${clientWidth} px: ${innerText.slice(0, 40)}`);
}

test.each(pageOfEachKind())(
  "$kind ($path) goes on below, not across, and no text is squeezed",
  async ({ path }) => {
    const { page } = await visitor.open(path, { viewport: { width: 1280, height: 720 }, bypassCSP: true });
    await page.addStyleTag({ content: "html { font-size: 200% !important; }" });
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe("32px");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
    expect(await page.evaluate(squeezed)).toEqual([]);
    await page.context().close();
  },
);
