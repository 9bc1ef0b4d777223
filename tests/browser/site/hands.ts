/** The hands with which one answers: a mouse, a finger on glass, keys alone. */
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { centreOf, type Shape } from "../../../src/engine/quiz/shape.ts";
import { arrangeByKeys, orderOf } from "./arranging.ts";
import { pressByKey, tabTo } from "./keyboard.ts";

export interface Hands {
  press(button: Locator): Promise<void>;
  tick(box: Locator): Promise<void>;
  /** One of radio buttons of the same name. */
  pick(radio: Locator): Promise<void>;
  write(box: Locator, text: string): Promise<void>;
  choose(select: Locator, label: string): Promise<void>;
  arrange(list: Locator, titles: readonly string[]): Promise<void>;
  /** At a place of a figure, whose radio button stands in the list below it. */
  point(figure: Locator, place: Shape, radio: Locator): Promise<void>;
}

/** Where in a figure the middle of a place lies. */
export async function spotOf(figure: Locator, place: Shape): Promise<{ x: number; y: number }> {
  const { width, height } = (await figure.boundingBox())!;
  const { x, y } = centreOf(place);
  return { x: (x / 100) * width, y: (y / 100) * height };
}

type Touch = (target: Locator, at?: { position: { x: number; y: number } }) => Promise<void>;

/** A browser's own list of choices lies outside the page, where no test reaches: there the choice is set. */
function pointing(touch: Touch): Hands {
  return {
    press: (button) => touch(button),
    tick: (box) => touch(box),
    pick: (radio) => touch(radio),
    async write(box, text) {
      // Under load Chromium loses what is typed right after a tap: one looks, and types again.
      await expect
        .poll(async () => {
          await touch(box);
          await box.fill("");
          await box.pressSequentially(text);
          return box.inputValue();
        })
        .toBe(text);
    },
    async choose(select, label) {
      await select.selectOption({ label });
    },
    async arrange(list, titles) {
      for (const [place, title] of titles.entries()) {
        const up = list.getByRole("button", { name: `Up: ${title}`, exact: true });
        for (let from = (await orderOf(list)).indexOf(title); from > place; from--) await touch(up);
      }
    },
    async point(figure, place) {
      await touch(figure, { position: await spotOf(figure, place) });
    },
  };
}

export const mouse: Hands = pointing((target, at) => target.click(at));
export const finger: Hands = pointing((target, at) => target.tap(at));

/** More than any group has. */
const mostRadios = 20;

export function keysOf(page: Page): Hands {
  const pick = async (radio: Locator): Promise<void> => {
    const name = await radio.getAttribute("name");
    const group = page.locator(`input[name="${name}"]`);
    await tabTo(page, group.first());
    await page.keyboard.press("Space");
    for (let moved = 0; moved < mostRadios && !(await radio.isChecked()); moved++)
      await page.keyboard.press("ArrowDown");
  };
  return {
    press: (button) => pressByKey(page, button),
    async tick(box) {
      await tabTo(page, box);
      await page.keyboard.press("Space");
    },
    pick,
    async write(box, text) {
      await tabTo(page, box);
      await page.keyboard.type(text);
    },
    async choose(select, label) {
      await tabTo(page, select);
      await page.keyboard.type(label);
    },
    arrange: (list, titles) => arrangeByKeys(page, list, titles),
    point: (_figure, _place, radio) => pick(radio),
  };
}
