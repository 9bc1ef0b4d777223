/** Where the numbers of a figure stand, and what its list says of them. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { itemList } from "../../layouts/figure/list.ts";
import { hit, margin, pictureWidth, placeItems } from "../../layouts/figure/places.ts";
import { itemSaid } from "../../layouts/figure/said.ts";
import { trayAccounts } from "../../layouts/tray/account.ts";
import { tray } from "../../layouts/tray/tray.ts";
import type { ActKind } from "../../src/engine/procedure/procedure.ts";
import type { ItemReference } from "../../src/model/module.ts";
import { millSite } from "../render/fixture.ts";

const item = (number: number, x: number, y: number): ItemReference => ({
  ...{ number, of: undefined, name: `item ${number}` },
  at: [x, y],
});

const percent = fc.double({ min: 0, max: 100, noNaN: true });
const figures = fc.record({
  items: fc.array(fc.tuple(percent, percent), { minLength: 1, maxLength: 40 }),
  height: fc.integer({ min: 50, max: 2000 }),
});

test("numbers stand outside the picture, in two columns, none within reach of another, as leaders end where they are to", () => {
  fc.assert(
    fc.property(figures, ({ items, height }) => {
      const given = items.map(([x, y], at) => item(at + 1, x, y));
      const { width, height: whole, items: placed } = placeItems(given, { width: 480, height });
      expect(placed.map(({ item: { number } }) => number).sort((a, b) => a - b)).toEqual(
        given.map(({ number }) => number),
      );
      const top = (whole - height) / 2;
      for (const [at, one] of placed.entries()) {
        expect([hit, width - hit]).toContain(one.x);
        expect(one.x < margin || one.x > width - margin).toBe(true);
        expect(one.y).toBeGreaterThanOrEqual(hit - 1e-6);
        expect(one.y).toBeLessThanOrEqual(whole - hit + 1e-6);
        expect(one.endX).toBeCloseTo(margin + (one.item.at[0] / 100) * pictureWidth, 6);
        expect(one.endY).toBeCloseTo(top + (one.item.at[1] / 100) * height, 6);
        for (const other of placed.slice(at + 1))
          if (other.x === one.x) expect(Math.abs(other.y - one.y)).toBeGreaterThanOrEqual(2 * hit - 1e-6);
      }
    }),
  );
});

test("one goes through the numbers as they stand: down the left column, then down the right", () => {
  const { items } = placeItems([item(1, 10, 90), item(2, 90, 60), item(3, 20, 10), item(4, 80, 20)], {
    width: 480,
    height: 480,
  });
  expect(items.map(({ item: { number } }) => number)).toEqual([3, 1, 4, 2]);
});

test("leaders of one side do not cross where they need not: the numbers stand in the order of what they lead to", () => {
  fc.assert(
    fc.property(figures, ({ items, height }) => {
      const { items: placed } = placeItems(
        items.map(([x, y], at) => item(at + 1, x, y)),
        { width: 480, height },
      );
      for (const side of [hit, pictureWidth + 2 * margin - hit]) {
        const column = placed.filter(({ x }) => x === side).sort((a, b) => a.y - b.y);
        const ends = column.map(({ endY }) => endY);
        expect(ends).toEqual(ends.toSorted((a, b) => a - b));
      }
    }),
  );
});

test("each is at the nearer side as long as there is room", () => {
  const { items } = placeItems([item(1, 10, 50), item(2, 90, 50), item(3, 20, 20)], {
    width: 480,
    height: 480,
  });
  expect(items.filter(({ x }) => x < margin).map(({ item: { number } }) => number)).toEqual([3, 1]);
  // Three rows of 42 fit beside a picture of 130: of four that lie at the left, one goes to the right.
  const crowded = [10, 20, 30, 40].map((x, at) => item(at + 1, x, 50));
  const placed = placeItems(crowded, { width: 480, height: 130 }).items;
  expect(placed.map(({ x }) => x < margin)).toEqual([true, true, true, false]);
});

const { mill } = millSite();
const listed = [
  { ...item(1, 10, 10), of: "guard", name: undefined },
  { ...item(2, 20, 20), of: "guard-screws", name: undefined },
  { ...item(3, 30, 30), name: "frame" },
];
const readable = (html: string): string =>
  html
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();

const ids = { row: (number: number) => `i__${number}`, place: (number: number) => `n__${number}` };

test("the list names each number, with its count, the steps that move it and where it is kept", () => {
  const list = itemList(listed, mill, ids).text;
  const [guard, screws, frame] = list.split("</li>").map(readable);
  const numbersOf = (kind: ActKind, id: string): string =>
    mill.steps
      .filter(({ step }) => step.acts.some(({ kind: is, target }) => is === kind && target === id))
      .map(({ number }) => number)
      .join(" ");
  expect(numbersOf("remove", "guard")).toBe("2");
  expect(guard).toMatch(
    new RegExp(
      `^1 guard Taken off: step 2 .*Put back: step ${numbersOf("refit", "guard")} Kept: shelf, face up$`,
    ),
  );
  expect(screws).toMatch(/^2 guard screws × 3 Slackened: steps? 2 .*Kept: tray 1, on a card$/);
  expect(frame).toBe("3 frame");
  for (const { step } of mill.steps.slice(1, 2)) expect(list).toContain(`<a href="#${step.id}">2</a>`);
});

test("a number says its item's name, and where it comes off and goes back", () => {
  const [guard, screws, frame] = listed.map((each) => itemSaid(each, mill));
  expect(guard).toMatch(/^1 guard: taken off in step 2, put back in step \d+$/);
  expect(screws).toMatch(/^2 guard screws: taken off in step \d+, put back in step \d+$/);
  expect(frame).toBe("3 frame");
  const never = { ...item(4, 1, 1), of: "no-such", name: "bed" };
  expect(itemSaid(never, mill)).toBe("4 bed: left alone");
});

test("numbered things bear their ids on trays, others do not", () => {
  const account = trayAccounts(mill)[1]!;
  const drawn = tray(account, 2, { named: new Set(["guard"]) }).text;
  expect(drawn.match(/data-of="[^"]*"/g)).toEqual(['data-of="guard"']);
  expect(tray(account, 2).text).not.toContain("data-of");
});
