/**
 * The words of a text as the search knows them. The index and the query are cut by the same rules, so that a thread or a
 * fastener is found however it is capitalised and spaced.
 */
import { compounds } from "./compounds.ts";

const ordinary = /\p{N}+(?:[./]\p{N}+)+|[\p{L}\p{N}]+(?:'\p{L}+)?/gu;

/** Words too common to tell pages apart; none of the trade's ("let", "off", "on" and "no" stay). */
const common = new Set(["a", "an", "and", "the", "of", "to", "is", "or", "x"]);

/** What is asked for: each name of a thread is one word. O(length). */
export function queryWords(text: string): string[] {
  return cut(text, (words) => words.slice(0, 1));
}

/** What is found: a name of a thread is one word, and its pieces are words too. O(length). */
export function indexWords(text: string): string[] {
  return cut(text, (words) => words);
}

function cut(text: string, take: (words: string[]) => string[]): string[] {
  const found: string[] = [];
  let rest = tidy(text);
  if (!/\d/.test(rest)) return ordinaryWords(rest);
  for (const { pattern, words } of compounds) {
    for (let match = pattern.exec(rest); match !== null; match = pattern.exec(rest)) {
      found.push(...take(words(match)));
      rest = `${rest.slice(0, match.index)} | ${rest.slice(match.index + match[0].length)}`;
    }
  }
  return [...found, ...ordinaryWords(rest)];
}

const ordinaryWords = (text: string): string[] =>
  (text.match(ordinary) ?? []).filter((word) => !common.has(word));

/** Series of threads with points: "B.A.", "B.S.W.", "U. N. C.". */
const dottedSeries = /(?<![\p{L}.])(?:b\. ?a|b\. ?s\. ?[wfp]|u\. ?n\. ?[cfs])(?:\.|(?![\p{L}\p{N}.]))/gu;

/** One way of writing for letters, fractions, the multiplication sign and the decimal comma. */
function tidy(text: string): string {
  if (/^[a-z ]*$/i.test(text)) return text.toLowerCase();
  return text
    .replace(/(\d)(?=[¼½¾⅐-⅞])/gu, "$1 ")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(dottedSeries, (name) => name.replace(/[. ]/g, ""))
    .replaceAll("\u2044", "/")
    .replace(/[×✕]|(?<=\d ?)\*(?= ?\d)/g, "x")
    .replace(/[‐-―−]/g, "-")
    .replace(/[″”“]/g, '"')
    .replace(/(\d),(?=\d)/g, "$1.")
    .replace(/\s+/g, " ");
}
