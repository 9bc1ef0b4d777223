/** Answers that give each item of a list a place in another list: pairs, and items sorted into groups. */
import { t } from "../words.ts";
import { fold } from "./fold.ts";
import { answered, type Given, isBlank, jsonKind, unreadable } from "./kind.ts";

/** For each item the place of what it was given, or undefined. */
export type Places = readonly (number | undefined)[];

/**
 * Reads a list with an entry for each item, in the written order: a place from 0, its text, or null for none. A list
 * that is shorter leaves the rest without; one of nothing but null is blank.
 */
export function readPlaces(count: number, texts: readonly string[], given: unknown): Given<Places> {
  if (isBlank(given)) return { state: "blank" };
  if (!Array.isArray(given)) return unreadable("wrong-kind", jsonKind(given), t`a list of ${count} entries`);
  if (given.length > count)
    return unreadable("too-many", t`${given.length} entries`, t`${count}, one for each item`);
  const places = given.map((one: unknown) => placeOf(texts, one));
  const odd = places.indexOf(-1);
  if (odd >= 0) {
    const found = typeof given[odd] === "string" ? `"${clipped(given[odd])}"` : oddWords(given[odd]);
    const expected = t`null, or one of the choices: its text, or a number from 0 to ${texts.length - 1}`;
    return unreadable(isName(given[odd]) ? "no-such-option" : "wrong-kind", found, expected);
  }
  if (places.every((place) => place === undefined)) return { state: "blank" };
  return answered(Array.from({ length: count }, (_, item) => places[item]));
}

const isName = (given: unknown): boolean => typeof given === "string" || typeof given === "number";
const oddWords = (given: unknown): string => (typeof given === "number" ? String(given) : jsonKind(given));

/** Undefined for none, -1 for what is no place. */
function placeOf(texts: readonly string[], given: unknown): number | undefined {
  if (given === null || given === undefined || given === "") return undefined;
  if (typeof given === "number") return texts[given] === undefined ? -1 : given;
  if (typeof given !== "string") return -1;
  const exact = texts.indexOf(given);
  return exact >= 0 || given.length > longest ? exact : texts.findIndex((text) => fold(text) === fold(given));
}

/** No choice is longer; what is, costs nothing. */
const longest = 4000;

const clipped = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
