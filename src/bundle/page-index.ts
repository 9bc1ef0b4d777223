/** The lunr index of pages: which words stand in their titles, headings and terms. */
import lunr from "lunr";
import { indexWords } from "../engine/search/words.ts";

export interface PageTexts {
  readonly title: string;
  readonly headings: readonly string[];
  readonly terms: readonly string[];
}

const boosts = { title: 10, headings: 4, terms: 3 } as const;

/**
 * Indexes pages, referred to by their numbers from 0; gives the index as lunr serialises it. Words are cut by us, because
 * lunr's own cutting and stemming tear names of threads apart. Scores are rounded to two figures: nobody sees the third,
 * and the file shrinks by a seventh.
 */
export function indexPages(pages: readonly PageTexts[]): object {
  const builder = new lunr.Builder();
  builder.ref("page");
  for (const [field, boost] of Object.entries(boosts)) builder.field(field, { boost });
  builder.tokenizer = tokens as unknown as typeof lunr.tokenizer;
  for (const [page, { title, headings, terms }] of pages.entries()) {
    builder.add({ page, title: [title], headings, terms });
  }
  const index = builder.build().toJSON() as { fieldVectors: [string, number[]][] };
  for (const vector of index.fieldVectors)
    vector[1] = vector[1].map((n, i) => (i % 2 === 0 ? n : Number(n.toPrecision(2))));
  return index;
}

const tokens = (texts: readonly string[] | undefined): lunr.Token[] =>
  (texts ?? []).flatMap(indexWords).map((word) => new lunr.Token(word, {}));
