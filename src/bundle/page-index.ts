/** The lunr index of pages: which words stand in their titles, headings and terms. */
import lunr from "lunr";
import { indexWords } from "../engine/search/words.ts";
import type { PackedIndex } from "../model/search-data.ts";

export interface PageTexts {
  readonly title: string;
  readonly headings: readonly string[];
  readonly terms: readonly string[];
}

const boosts = { title: 10, headings: 4, terms: 3 } as const;

/** What lunr serialises, as far as it is read here. */
interface Written {
  readonly fieldVectors: readonly (readonly [ref: string, elements: readonly number[]])[];
  readonly invertedIndex: readonly (readonly [word: string, posting: { readonly _index: number }])[];
}

/**
 * Indexes pages, referred to by their numbers from 0. Words are cut by us, because lunr's own cutting and stemming tear
 * names of threads apart. Scores are rounded to two figures: nobody sees the third, and the file shrinks by a seventh.
 */
export function indexPages(pages: readonly PageTexts[]): PackedIndex {
  const builder = new lunr.Builder();
  builder.ref("page");
  for (const [field, boost] of Object.entries(boosts)) builder.field(field, { boost });
  builder.tokenizer = tokens as unknown as typeof lunr.tokenizer;
  for (const [page, { title, headings, terms }] of pages.entries()) {
    builder.add({ page, title: [title], headings, terms });
  }
  return pack(builder.build().toJSON() as Written, pages.length);
}

const tokens = (texts: readonly string[] | undefined): lunr.Token[] =>
  (texts ?? []).flatMap(indexWords).map((word) => new lunr.Token(word, {}));

function pack({ fieldVectors, invertedIndex }: Written, pages: number): PackedIndex {
  const placeOf = new Map(invertedIndex.map(([, { _index }], place) => [_index, place]));
  const vectors = new Map(fieldVectors);
  const packed = (field: string) =>
    Array.from({ length: pages }, (_, page) => packVector(vectors.get(`${field}/${page}`) ?? [], placeOf));
  return {
    words: invertedIndex.map(([word]) => word),
    fields: Object.keys(boosts).map((field) => [field, packed(field)]),
  };
}

function packVector(elements: readonly number[], placeOf: ReadonlyMap<number, number>): number[] {
  const weights = new Map<number, number>();
  for (let i = 0; i < elements.length; i += 2) weights.set(placeOf.get(elements[i]!)!, elements[i + 1]!);
  let before = 0;
  return [...weights.keys()]
    .sort((a, b) => a - b)
    .flatMap((place) => {
      const step = place - before;
      before = place;
      return [step, Number(weights.get(place)!.toPrecision(2))];
    });
}
