import { describe, expect, test } from "vitest";
import { type CutPlace, findersFor } from "../../../src/engine/search/best-place.ts";
import { indexWords } from "../../../src/engine/search/words.ts";

describe("the best place on a page", () => {
  const place = (heading: string, ...names: string[]): CutPlace => ({
    heading: indexWords(heading),
    names: names.map(indexWords),
  });
  const row = (says: string): CutPlace => ({ heading: indexWords(says), names: [], isRow: true });
  const title = place("Strip a spring motor");
  const places = [
    place("Let the spring down", "winding key"),
    place("Undo the motor board", "4 BA"),
    place("Fit the board", "4 BA"),
  ];

  test.each([
    ["spring", -1],
    ["let down", 0],
    ["board", 1],
    ["4ba", 1],
    ["fit board", 2],
    ["winding", 0],
    ["zither", -1],
  ])("for %s it is %i", (query, expected) => {
    expect(findersFor(query).bestPlace(title, places)).toBe(expected);
  });

  test.each([
    ["2 BA", 0],
    ["2BA bolts", 0],
    ["bolts", 1],
    ["BA", 0],
    ["motor", -1],
  ])(
    "a row is the place of its thread, a heading that of what is done: for %s it is %i",
    (query, expected) => {
      const places = [row("motor bolts, 2 BA"), place("Slacken the bolts", "bag"), place("Bar the basin")];
      expect(findersFor(query).bestPlace(title, places)).toBe(expected);
    },
  );

  test.each([
    ["m6", ["M6×1"]],
    ["1/4 bsw", ["1/4 in BSW"]],
    ["measure m6 bsw", ["M6×1", "1/4 in BSW"]],
    ["measure", []],
    ["spring", []],
  ])("what was found where heading and title do not say it: %s", (query, expected) => {
    const names = ["vice", "M6×1", "1/4 in BSW", "M5"];
    const found = findersFor(query).namesAt(title, place("Measure the threads", ...names));
    expect(found.map((at) => names[at])).toEqual(expected);
  });
});
