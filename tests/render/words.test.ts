import { expect, test } from "vitest";
import { capital, counted, date, duration, listed, sentence } from "../../layouts/words.ts";

test.each([
  [0, "0 min"],
  [5, "5 min"],
  [7.5, "7.5 min"],
  [60, "1 h"],
  [150, "2 h 30 min"],
  [1440, "24 h"],
  [2880, "2 days"],
])("%d minutes are written %s", (minutes, written) => {
  expect(duration(minutes)).toBe(written);
});

test("lists and counts", () => {
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
  expect([counted(1, "step"), counted(2, "step"), counted(0, "sheet")]).toEqual([
    "1 step",
    "2 steps",
    "0 sheets",
  ]);
});

test("dates that are none stay as they are", () => {
  expect([date("2026-11-20"), date("2026-03-01"), date("2026-13-01"), date("in spring")]).toEqual([
    "20 November 2026",
    "1 March 2026",
    "2026-13-01",
    "in spring",
  ]);
});

test("sentences", () => {
  expect([sentence("so"), sentence("so. "), sentence("so?"), capital("so"), capital("")]).toEqual([
    "so.",
    "so.",
    "so?",
    "So",
    "",
  ]);
});
