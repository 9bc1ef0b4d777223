import { expect, test } from "vitest";
import { threadsIn } from "../../../src/engine/workshop/threads-in-text.ts";

test.each([
  [
    "2 BA and #10-32, 0 BA and M6×1, 1/4 in BSW and 1/4-20 UNC.",
    ["2 BA", "#10-32", "0 BA", "M6×1", "1/4 in BSW", "1/4-20 UNC"],
  ],
  ["about 2BA to 0 BA, M5 to M6 and 1/4 in", ["2BA", "0 BA", "M5", "M6"]],
  ["A ¼-20 in (BSF) or a 1/4-20; again a 1/4-20", ["¼-20", "BSF", "1/4-20"]],
  ["Whitworth 55° (BS 84)", ["Whitworth"]],
])("%s", (text, threads) => {
  expect(threadsIn(text)).toEqual(threads);
});

test.each([
  ["wait 10-24 hours, 3-5 drops, 1/2 in of play, 150 x 60 mm"],
  ["a bag, the BASE, form M6a, 1.1/4-20, 5 m 3 x"],
  ["M6x0.9 and 99 BA are in no table"],
  [""],
])("no thread in: %s", (text) => {
  expect(threadsIn(text)).toEqual([]);
});
