/** A list of steps that is put in order on a page. */
import type { Locator, Page } from "playwright-core";
import { tabTo } from "./keyboard.ts";

/** The list's steps by title, as they stand now. */
export async function orderOf(list: Locator): Promise<string[]> {
  const buttons = await list.getByRole("button", { name: /^Up: / }).all();
  return Promise.all(
    buttons.map(async (button) => ((await button.getAttribute("aria-label")) ?? "").slice("Up: ".length)),
  );
}

const rowOf = (list: Locator, title: string): Locator =>
  list
    .getByRole("listitem")
    .filter({ has: list.page().getByRole("button", { name: `Up: ${title}`, exact: true }) });

/** Puts the steps in an order with keys alone: the arrows go from row to row, Alt with an arrow takes the row along. */
export async function arrangeByKeys(page: Page, list: Locator, wanted: readonly string[]): Promise<void> {
  const first = (await orderOf(list))[0]!;
  await tabTo(page, rowOf(list, first));
  let at = 0;
  for (const [place, title] of wanted.entries()) {
    const from = (await orderOf(list)).indexOf(title);
    await pressTimes(page, from > at ? "ArrowDown" : "ArrowUp", Math.abs(from - at));
    await pressTimes(page, "Alt+ArrowUp", from - place);
    at = place;
  }
}

async function pressTimes(page: Page, key: string, times: number): Promise<void> {
  for (let time = 0; time < times; time++) await page.keyboard.press(key);
}
