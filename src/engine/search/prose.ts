/** Search over what sections say: lists of the sections that have a word, in shards by how the word begins. */
import { fitWithoutError, isWhole } from "./match.ts";
import { indexWords } from "./words.ts";

/** Of each word the sections that have it, rising: the first by its number, the others by the step from the one before. */
export type Shard = Readonly<Record<string, readonly number[]>>;

/** Gives a shard by its name; undefined where it is not there, or not yet. */
export type ShardOf = (name: string) => Shard | undefined;

export interface FoundSection {
  readonly section: number;
  readonly score: number;
}

/** Words that tell sections apart: not those of one or two letters, but every figure and series of threads. */
export const tellsApart = (word: string): boolean => word.length > 2 || /\p{N}/u.test(word) || word === "ba";

/** The words by which a text is found. O(length). */
export const proseWords = (text: string): string[] => indexWords(text).filter(tellsApart);

/** The shard in which a word stands, and all that begin with it. */
export const shardName = (word: string): string => `${word}_`.slice(0, 2);

/** Of each section its words; gives all shards by name. O(words). */
export function makeShards(sections: readonly Iterable<string>[]): Map<string, Record<string, number[]>> {
  const postings = new Map<string, number[]>();
  for (const [section, words] of sections.entries()) {
    for (const word of new Set(words)) {
      const list = postings.get(word);
      if (list === undefined) postings.set(word, [section]);
      else list.push(section);
    }
  }
  const shards = new Map<string, Record<string, number[]>>();
  for (const word of [...postings.keys()].sort()) {
    const name = shardName(word);
    // Without a prototype, for "constructor" is a word too.
    const shard = shards.get(name) ?? (Object.create(null) as Record<string, number[]>);
    shard[word] = steps(postings.get(word)!);
    shards.set(name, shard);
  }
  return shards;
}

const steps = (rising: readonly number[]): number[] => rising.map((each, at) => each - (rising[at - 1] ?? 0));

/** The shards that a query needs. */
export const shardsFor = (meant: readonly (readonly string[])[]): string[] => [
  ...new Set(meant.flat().filter(tellsApart).map(shardName)),
];

/**
 * Sections that answer every word of a query, each of which may stand for several; best first. A word also fits as the beginning of
 * another, or by its stem. O(words of the shards + sections found).
 */
export function sectionsWith(
  meant: readonly (readonly string[])[],
  shards: ShardOf,
  all: number,
): FoundSection[] {
  let found: Map<number, number> | undefined;
  for (const words of meant.map((each) => each.filter(tellsApart)).filter((each) => each.length > 0)) {
    const here = sectionsOf(words, shards, all);
    const before: Map<number, number> = found ?? here;
    found = new Map(
      [...here]
        .filter(([section]) => before.has(section))
        .map(([section, score]) => [section, score + (before === here ? 0 : before.get(section)!)]),
    );
  }
  return [...(found ?? [])]
    .map(([section, score]) => ({ section, score }))
    .sort((a, b) => b.score - a.score || a.section - b.section);
}

/** A rare word says more of a section than one that stands in many. */
function sectionsOf(words: readonly string[], shards: ShardOf, all: number): Map<number, number> {
  const best = new Map<number, number>();
  for (const typed of words) {
    for (const [list, fit] of fitting(typed, shards(shardName(typed)) ?? {})) {
      const score = fit * Math.log(1 + all / list.length);
      let section = 0;
      for (const step of list) {
        section += step;
        if (score > (best.get(section) ?? 0)) best.set(section, score);
      }
    }
  }
  return best;
}

/** What is rather a word than the beginning of one fits only itself. */
function fitting(typed: string, shard: Shard): (readonly [list: readonly number[], fit: number])[] {
  if (isWhole(typed) || typed.length < 2) return Object.hasOwn(shard, typed) ? [[shard[typed]!, 1]] : [];
  const fits = fitWithoutError(typed);
  return Object.keys(shard)
    .map((word) => [shard[word]!, fits(word)] as const)
    .filter(([, fit]) => fit > 0);
}
