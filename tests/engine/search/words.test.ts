import { describe, expect, test } from "vitest";
import { indexWords, queryWords } from "../../../src/engine/search/words.ts";

/** Ways of writing one name. Designations after BS 93, ISO 68-1/965-1, ASME B1.1 and BS 84; the others are common practice. */
const sameName: readonly (readonly string[])[] = [
  ["2 BA", "2BA", "2 ba", "Ba 2", "2-BA", "No. 2 BA", "2 B.A.", "2 B. A.", "2 b.a"],
  ["M3x0.5", "m3 x 0.5", "M3 × 0.5", "M3X0,5", "M 3 x .5", "M3x0.50", "M3 x 0,5", "M3*0.5"],
  [
    "1/4-20 UNC",
    "1/4 - 20 unc",
    "¼-20 UNC",
    '1/4"-20 UNC',
    "1/4 in x 20 UNC",
    "1/4–20UNC",
    "1/4 20 UNC",
    "1/4-20 U.N.C.",
  ],
  ["1/4-20", "1/4 20", "¼ 20", "1/4 x 20"],
  ["#4-40 UNC", "4-40 unc", "No. 4-40 UNC", "no 4-40UNC"],
  ["1/4 in BSF", "1/4 BSF", '1/4" bsf', "¼ BSF"],
  ["1 1/4 in BSW", "1¼ BSW", "1 1/4 bsw", "1 1/4 B.S.W.", "1 1/4 Whit.", "W 1 1/4"],
  [
    "3/8 in BSW",
    "3/8 W",
    '3/8" W',
    "3/8W",
    "W 3/8",
    'W3/8"',
    "3/8 in W",
    "3/8 whit",
    '⅜" Whit.',
    "3/8 Whitworth",
  ],
  ["1/4-20 BSW", "1/4 x 20 Whit", "1/4 20 whitworth"],
  ["1 in BSW", "1 in Whit", '1" Whitworth'],
  ["5 mm", "5mm", "5.0 MM"],
  ["café", "Cafe", "CAFÉ"],
];

describe("a name is one word, however it is written", () => {
  test.each(sameName)("%s", (...ways) => {
    const words = ways.map(queryWords);
    expect(words[0]).toHaveLength(1);
    for (const other of words) expect(other).toEqual(words[0]);
  });

  test("and different threads are different words", () => {
    const threads = [
      "2 BA",
      "4 BA",
      "M3x0.5",
      "M3x0.35",
      "M4x0.7",
      "1/4-20 UNC",
      "1/4-28 UNF",
      "1/4 BSF",
      "1/4 BSW",
    ];
    expect(new Set(threads.flatMap(queryWords)).size).toBe(threads.length);
  });
});

test.each([
  ["4 BA board screws", ["4ba", "ba", "board", "screws"]],
  ["M3x0.5", ["m3x0.5", "m3"]],
  ["1/4-20 UNC", ["1/4-20unc", "1/4-20", "1/4unc", "unc", "1/4in", "1/4"]],
  ["3/8 Whit", ["3/8bsw", "bsw", "whitworth", "3/8in", "3/8"]],
  ["a lamp of 5 W", ["lamp", "5", "w"]],
  ["Slotted screwdriver, 5 mm", ["5mm", "5", "slotted", "screwdriver"]],
])("what is indexed of %s can also be found by its pieces", (text, words) => {
  expect(indexWords(text)).toEqual(words);
});

test("every word asked for is a word indexed, or begins one", () => {
  for (const text of [
    ...sameName.flat(),
    "the motor-board screws",
    "Let the spring down",
    "H226",
    "0.9 N·m",
  ]) {
    const indexed = indexWords(text);
    for (const word of queryWords(text)) expect(indexed).toContain(word);
  }
});

test("words of the trade that look common are kept", () => {
  expect(queryWords("Let the spring down, take it off; set no. on")).toEqual([
    "let",
    "spring",
    "down",
    "take",
    "it",
    "off",
    "set",
    "no",
    "on",
  ]);
});

test("while a thread is typed, what stands there begins what is indexed", () => {
  for (const full of ["2 BA", "M3x0.5", "1/4-20 UNC", "1/4 in BSF", "3/8 Whitworth", "3/8 W"]) {
    const indexed = indexWords(full);
    for (let end = 2; end <= full.length; end++) {
      const typed = queryWords(full.slice(0, end)).filter((word) => word.length > 1);
      for (const word of typed)
        expect(
          indexed.some((each) => each.startsWith(word)),
          `${full.slice(0, end)}: ${word}`,
        ).toBe(true);
    }
  }
});

test("signs of a markup or a regular expression are no words", () => {
  expect(queryWords("<b>.*+?^$()|[]\\")).toEqual(["b"]);
  expect(queryWords("   ")).toEqual([]);
});
