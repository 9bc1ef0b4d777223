/** Merged reasons, by the ear: no outside truth says how a sentence reads. */
import { expect, test } from "vitest";
import { mergedReasons } from "../../../src/engine/procedure/merged-reasons.ts";

test.each([
  [
    ["the crank must be off before going back on", "the crank screws must be off before going back on"],
    ["the crank and the crank screws must be off before going back on"],
  ],
  [
    [
      "the disc is seen to before going back on",
      "rust holds",
      "the springs are seen to before going back on",
      "the stud is seen to before going back on",
    ],
    ["the disc, the springs and the stud are seen to before going back on", "rust holds"],
  ],
  [
    [
      "the click lies in the motor, which comes out first",
      "the screws lie in the motor, which comes out first",
    ],
    ["the click and the screws lie in the motor, which comes out first"],
  ],
  [
    ["once the plate is back on, it covers the barrel", "once the plate is back on, it covers the wheel"],
    ["once the plate is back on, it covers the barrel and the wheel"],
  ],
  [
    [
      "the disc is seen to before the nut is tightened on it",
      "the spring is seen to before the nut is tightened on it",
    ],
    ["the disc and the spring are seen to before the nut is tightened on them"],
  ],
])("%j", (reasons, merged) => {
  expect(mergedReasons(reasons)).toEqual(merged);
});

test.each([
  [["the cover is still on: it covers the wheel", "the lid is still on: it covers the spring"]],
  [["a motor under power runs away", "the wheel is clean"]],
  [["the lid is held by its screws before going on", "the cap is held by its screws before going on"]],
  [[]],
])("what is not alike, or speaks of one thing alone, stays as it is: %j", (reasons) => {
  expect(mergedReasons(reasons)).toEqual(reasons);
});
