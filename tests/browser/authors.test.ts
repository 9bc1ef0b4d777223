/** The page for authors on a phone: what check says is shown as it stands on a terminal, where a mark points at a column. */
import { expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";

const visitor = withBrowser();

interface Marked {
  readonly column: number;
  /** How far the mark stands from the letter above it, in pixels. */
  readonly off: number;
  readonly isBelow: boolean;
}

/** Each mark of the page, and where it stands against the letter at its column of the line above. */
function marks(): Marked[] {
  const boxOf = (text: Node, at: number): DOMRect => {
    const range = document.createRange();
    range.setStart(text, at);
    range.setEnd(text, at + 1);
    return range.getBoundingClientRect();
  };
  return [...document.querySelectorAll(".authors-told pre code")].flatMap((code) => {
    const text = code.firstChild!;
    const [line, below] = code.textContent!.split("\n") as [string, string?];
    const column = below?.indexOf("^") ?? -1;
    if (column < 0) return [];
    const [letter, mark] = [boxOf(text, column), boxOf(text, line.length + 1 + column)];
    return [{ column, off: Math.abs(letter.left - mark.left), isBelow: mark.top >= letter.bottom - 1 }];
  });
}

test("each mark stands under its column, and what scrolls is reached by key", async () => {
  const { page, troubles } = await visitor.open("authors/", { viewport: { width: 360, height: 740 } });
  await page.evaluate(() => {
    for (const each of document.querySelectorAll("details")) each.open = true;
  });
  const found = await page.evaluate(marks);
  expect(found.length).toBeGreaterThan(100);
  // Some stand further to the right than the screen is wide.
  expect(Math.max(...found.map(({ column }) => column))).toBeGreaterThan(50);
  expect(found.filter(({ off, isBelow }) => off > 0.5 || !isBelow)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  expect(await page.locator("pre:not([tabindex='0'][role=group][aria-label])").count()).toBe(0);
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});
