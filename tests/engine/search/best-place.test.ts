import { describe, expect, test } from "vitest";
import { placeFinder } from "../../../src/engine/search/best-place.ts";
import { indexWords } from "../../../src/engine/search/words.ts";

describe("the best place on a page", () => {
  const place = (heading: string, ...names: string[]) => ({
    heading: indexWords(heading),
    names: names.flatMap(indexWords),
  });
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
    expect(placeFinder(query)(title, places)).toBe(expected);
  });
});
