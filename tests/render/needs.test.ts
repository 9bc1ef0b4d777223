/** What must come before a step, and with what it may change places, in words. */
import { expect, test } from "vitest";
import { needs } from "../../layouts/components/needs.ts";
import { millSite } from "./fixture.ts";

const readable = (html: string): string =>
  html
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();
const numbers = new Map([
  ["lid-off", 1],
  ["belt-off", 2],
]);
const view = millSite().mill.steps[0]!;
const pair = { first: "lid-off", then: view.step.id, because: ["the lid covers the belt"], critical: true };

test("nothing, where a step is free", () => {
  expect(needs({ ...view, needs: [], step: { ...view.step, maySwap: new Map() } }, numbers)).toBeUndefined();
});

test("each pair with its reason, and each swap with the author's", () => {
  const step = { ...view.step, maySwap: new Map([["belt-off", "either hand is free"]]) };
  expect(readable(needs({ ...view, needs: [pair], step }, numbers)!.text)).toBe(
    "Comes after 1 (critical) ; may change places with 2 1 : The lid covers the belt. This step or 2 first: Either hand is free.",
  );
  expect(readable(needs({ ...view, needs: [], step }, numbers)!.text)).toMatch(/^May change places with 2 /);
});
