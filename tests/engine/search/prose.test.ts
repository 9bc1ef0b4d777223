import fc from "fast-check";
import { expect, test } from "vitest";
import { markerFor } from "../../../src/engine/search/marks.ts";
import { fitWithoutError, isWhole } from "../../../src/engine/search/match.ts";
import {
  makeShards,
  proseWords,
  sectionsWith,
  shardsFor,
  tellsApart,
} from "../../../src/engine/search/prose.ts";
import { rephraser } from "../../../src/engine/search/synonyms.ts";
import { queryWords } from "../../../src/engine/search/words.ts";

const word = fc.constantFrom(
  ..."spring springs motor motors oil oiled oiler 4ba ba unc uncover 1/4-20 m3 m3x0.5 4 40 constructor __proto__ of".split(
    " ",
  ),
);

/** Every word of every section is looked at. */
function fullScan(sections: readonly (readonly string[])[], query: readonly string[]): number[] {
  const asked = query.filter(tellsApart);
  const fits = (typed: string, has: string) =>
    isWhole(typed) || typed.length < 2 ? has === typed : fitWithoutError(typed)(has) > 0;
  return sections.flatMap((words, section) =>
    asked.length > 0 && asked.every((typed) => words.some((has) => fits(typed, has))) ? [section] : [],
  );
}

test("the lists find what a full scan finds, from the shards that the query asks for", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(word, { maxLength: 6 }), { maxLength: 8 }),
      fc.array(word, { maxLength: 3 }),
      (sections, query) => {
        const meant = query.map((each) => [each]);
        const shards = JSON.parse(JSON.stringify([...makeShards(sections)])) as [
          string,
          Record<string, number[]>,
        ][];
        const wanted = new Map(shards.filter(([name]) => shardsFor(meant).includes(name)));
        const found = sectionsWith(meant, (name) => wanted.get(name), sections.length);
        expect(found.map(({ section }) => section).sort((a, b) => a - b)).toEqual(fullScan(sections, query));
      },
    ),
    { numRuns: 500 },
  );
});

test("words of prose are those that tell sections apart", () => {
  expect(proseWords("Is it on a 4 BA or M3 screw?")).toEqual(["m3", "4ba", "ba", "screw"]);
});

test("the sentence that says most, and the words in it", () => {
  const marker = markerFor(queryWords("ratchet 4 BA"));
  const texts = ["Hold the ratchet. Undo the 4 B.A. screw of the ratchet. Wait."];
  expect(marker.sentence(texts)).toBe("Undo the 4 B.A. screw of the ratchet.");
  expect(marker.pieces("The 4 BA one, a ratchet.").filter(([, isFound]) => isFound)).toEqual([
    ["4 BA", true],
    ["ratchet", true],
  ]);
  expect(marker.sentence(["Nothing of it."])).toBeUndefined();
});

test("pieces are the whole text again", () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(
        markerFor(["spring", "m3"])
          .pieces(text)
          .map(([piece]) => piece)
          .join(""),
      ).toBe(text);
    }),
  );
});

test("a name is put in the other words of its list, within a longer query", () => {
  const rephrase = rephraser([
    ["methylated spirit", "meths"],
    ["spanner", "wrench"],
  ]);
  expect(rephrase(queryWords("meths fire")).map(({ words }) => words)).toEqual([
    ["methylated", "spirit", "fire"],
  ]);
  expect(rephrase(queryWords("methylated spirit")).map(({ instead }) => instead)).toEqual(["meths"]);
  expect(rephrase(queryWords("spirit"))).toEqual([]);
});
