/** What one does with nothing but keys. */
import type { Locator, Page } from "playwright-core";

/** So often Tab is pressed before a thing counts as out of reach. */
const patience = 200;

/** Presses Tab (or Shift+Tab) until the element has the focus. */
export async function tabTo(page: Page, target: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let pressed = 0; pressed < patience; pressed++) {
    if (await hasFocus(target)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${target} is not reached in ${patience} presses of ${key}`);
}

export function hasFocus(target: Locator): Promise<boolean> {
  return target.evaluate((element) => element === document.activeElement);
}

/** Goes to a button by Tab and presses it by Enter. */
export async function pressByKey(
  page: Page,
  button: Locator,
  key: "Tab" | "Shift+Tab" = "Tab",
): Promise<void> {
  await tabTo(page, button, key);
  await page.keyboard.press("Enter");
}
