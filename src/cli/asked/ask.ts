/** Questions put to a person, one at a time, each with what holds where nothing is answered. */
import { didYouMean } from "../did-you-mean.ts";

/** Where questions are put: a terminal, or what a test hands in. */
export interface Asker {
  /** The line that is answered; undefined where no more comes (Ctrl+C, end of input). */
  ask(question: string): Promise<string | undefined>;
  /** Says something between questions. */
  say(text: string): void;
}

/** No answer came, so nothing is to be done. */
export class Stopped extends Error {}

/** What a written answer comes to: a value, or what is wrong with it in words. */
export type Understood<Value> = { readonly value: Value } | { readonly wrong: string };

/** Asks until the answer is understood. An empty one stands for `usual`. Throws Stopped where no answer comes. */
export async function askFor<Value>(
  asker: Asker,
  question: string,
  usual: string,
  understand: (answer: string) => Understood<Value>,
): Promise<Value> {
  for (;;) {
    const line = await asker.ask(`${question} [${usual === "" ? "none" : usual}] `);
    if (line === undefined) throw new Stopped();
    const understood = understand(line.trim() === "" ? usual : line.trim());
    if ("value" in understood) return understood.value;
    asker.say(`  ${understood.wrong}\n`);
  }
}

/** One of few, by number or by name. */
export const oneOf =
  (names: readonly string[]) =>
  (answer: string): Understood<string> => {
    const { found, wrong } = find(answer, names);
    return found === undefined ? { wrong } : { value: found };
  };

/** Some of many, by number or by name, with commas or spaces between; none for "none" or nothing. Each counts once. */
export const someOf =
  (names: readonly string[]) =>
  (answer: string): Understood<readonly string[]> => {
    const words = answer.split(/[\s,;]+/).filter((word) => word !== "" && word !== "none");
    const looked = words.map((word) => find(word, names));
    const [amiss] = looked.filter(({ found }) => found === undefined);
    if (amiss !== undefined) return { wrong: amiss.wrong };
    return { value: [...new Set(looked.map(({ found }) => found!))] };
  };

/** A whole number within bounds. */
export const numberWithin =
  (from: number, to: number) =>
  (answer: string): Understood<number> => {
    const value = /^\d{1,6}$/.test(answer) ? Number(answer) : Number.NaN;
    return value >= from && value <= to
      ? { value }
      : { wrong: `"${answer.slice(0, 60)}" is no whole number from ${from} to ${to}.` };
  };

/** The names with their numbers, as they are shown before a question. */
export const numbered = (names: readonly string[]): string =>
  names.map((name, at) => `  ${String(at + 1).padStart(3)}  ${name}\n`).join("");

function find(word: string, names: readonly string[]): { found?: string; wrong: string } {
  const found = /^\d+$/.test(word)
    ? names[Number(word) - 1]
    : names.find((name) => name === word.toLowerCase());
  if (found !== undefined) return { found, wrong: "" };
  const meant = didYouMean(word.toLowerCase(), names);
  return {
    wrong: `There is no "${word.slice(0, 60)}" in the list.${meant} Give a name or a number from 1 to ${names.length}.`,
  };
}
