import { expect, test } from "vitest";
import { ghsCategory, nfpaClass } from "../../../../src/engine/workshop/air/flammability.ts";

test("a boiling point at the limit itself", () => {
  expect(ghsCategory(-20, 35)?.category).toBe(1);
  expect(ghsCategory(-20, 35.01)?.category).toBe(2);
  expect([nfpaClass(-20, 37.7), nfpaClass(-20, 37.8)]).toEqual(["IA", "IB"]);
  expect(ghsCategory(93.1, 200)).toBeUndefined();
});
