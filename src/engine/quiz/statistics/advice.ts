/** Which questions an author should look at, and why, in words. The bounds are common practice, not laws. */
import type { ItemStatistics, QuizStatistics } from "./item-statistics.ts";
import type { OptionCount } from "./options.ts";

export interface OptionFacts extends OptionCount {
  readonly text: string;
  readonly right: boolean;
}

/** With fewer sittings than this, chance alone moves the figures more than a question does. Common practice. */
export const smallSample = 30;

interface Facts {
  readonly item: ItemStatistics;
  readonly quiz: QuizStatistics;
  readonly options: readonly OptionFacts[];
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const figure = (value: number): string => value.toFixed(2);

const looks: readonly ((facts: Facts) => string | readonly string[] | undefined)[] = [
  ({ item: { difficulty } }) =>
    difficulty !== null && difficulty < 0.2
      ? `hardly anybody gets it right (${percent(difficulty)}): is the key right, and is it taught?`
      : undefined,
  ({ item: { difficulty } }) =>
    difficulty !== null && difficulty > 0.95
      ? `nearly everybody gets it right (${percent(difficulty)}): it tells nobody apart; keep it if it must be known`
      : undefined,
  ({ item: { discrimination } }) =>
    discrimination !== null && discrimination < 0
      ? `those who do well at the rest do worse at it (${figure(discrimination)}): look for a wrong key or a second right option`
      : undefined,
  ({ item: { discrimination } }) =>
    discrimination !== null && discrimination >= 0 && discrimination < 0.1
      ? `it goes hardly together with the rest (${figure(discrimination)}): read it as a beginner would`
      : undefined,
  ({ item: { alphaWithout }, quiz: { alpha } }) =>
    alpha !== null && alphaWithout !== null && alphaWithout > alpha + 0.02
      ? `the quiz hangs together better without it (alpha ${figure(alpha)}, without it ${figure(alphaWithout)})`
      : undefined,
  ({ options }) =>
    options
      .filter(({ right, taken }) => !right && taken === 0)
      .map(({ text }) => `nobody takes "${text}": put a mistake there that people really make`),
  ({ options }) => {
    const best = Math.max(0, ...options.filter(({ right }) => right).map(({ restMean }) => restMean ?? 0));
    return options
      .filter(({ right, taken, restMean }) => !right && taken > 1 && restMean !== null && restMean > best)
      .map(({ text }) => `the better people take "${text}", which counts as wrong: is it?`);
  },
];

/** Reasons to look at a question; none where it has worked, and only one where nobody was asked it. `options` is empty for a question without any. */
export function reasonsToLook(
  item: ItemStatistics,
  quiz: QuizStatistics,
  options: readonly OptionFacts[],
): string[] {
  if (item.asked === 0) return ["nobody was asked it: nothing is known of it yet"];
  return looks.flatMap((look) => look({ item, quiz, options }) ?? []);
}

/** What to say of the number of sittings. */
export function sampleWords(persons: number): string | undefined {
  return persons < smallSample
    ? `${persons} sittings are few: what is said here may be chance. From about ${smallSample} on it begins to mean something.`
    : undefined;
}
