/** What comes next in a module, in words, with where it is done. */

import type { ReleaseCard } from "../../engine/competency/release.ts";
import type { Missing, ModuleState, Standing } from "../../engine/competency/state.ts";
import { markWords, shareWords } from "../../engine/quiz/score-words.ts";
import { t } from "../../engine/words.ts";
import type { DayWords } from "./day-words.ts";

/** `file` is relative to the root of the site. */
export interface Next {
  readonly text: string;
  readonly file?: string;
}

export interface Naming {
  readonly cards: ReadonlyMap<string, ReleaseCard>;
  readonly day: DayWords;
}

type Words = {
  readonly [Kind in Missing["kind"]]: (
    missing: Extract<Missing, { kind: Kind }>,
    card: ReleaseCard,
    naming: Naming,
  ) => Next;
};

const page = (module: string, folder = ""): string => `modules/${module}/${folder}index.html`;
const ofNeeded = ({ has, needs }: { readonly has: number; readonly needs: number }): string =>
  t`${has} of ${needs}`;

const words: Words = {
  module: ({ module }, _, { cards }) => ({
    text: t`Be signed off first for “${cards.get(module)?.title ?? module}”`,
    file: page(module),
  }),
  reading: (_, { module }) => ({ text: t`Read the sheet`, file: page(module) }),
  hazard: ({ hazard }, { hazards }) => ({
    text: t`Read the hazard “${hazards.find(({ id }) => id === hazard)?.title ?? hazard}”`,
    file: `hazards/${hazard}/index.html`,
  }),
  quiz: ({ best, pass }, { module }) => ({
    text:
      best === undefined
        ? t`Sit the quiz: ${markWords(pass)} passes`
        : t`Sit the quiz again: ${shareWords(best)} so far, ${markWords(pass)} passes`,
    file: page(module, "quiz/"),
  }),
  "supervised-quiz": ({ sat }, { module }) =>
    sat
      ? { text: t`A mentor marks the quiz that you handed in` }
      : { text: t`Sit the quiz with a mentor in the room`, file: page(module, "quiz/") },
  practice: ({ practice }, { module, practices }) => ({
    text: t`Put “${practices.find(({ id }) => id === practice)?.title ?? practice}” in order`,
    file: `${page(module, "practice/")}#practice-${practice}`,
  }),
  "dry-run": (_, { module }) => ({
    text: t`Perform it on paper without a critical stop`,
    file: page(module, "dry-run/"),
  }),
  watched: (missing) => ({ text: t`Do it while a mentor watches and helps: ${ofNeeded(missing)}` }),
  unaided: (missing) => ({ text: t`Do it unaided while a mentor watches: ${ofNeeded(missing)}` }),
  occasions: (missing) => ({ text: t`Be watched on different days: ${ofNeeded(missing)}` }),
  mentors: (missing) => ({ text: t`Be watched by different mentors: ${ofNeeded(missing)}` }),
  phase: ({ phase }, { phases }) => ({
    text: t`Be watched at “${phases.find(({ id }) => id === phase)?.title ?? phase}”`,
  }),
};

export function nextWords(missing: Missing, card: ReleaseCard, naming: Naming): Next {
  const word = words[missing.kind] as (missing: Missing, card: ReleaseCard, naming: Naming) => Next;
  return word(missing, card, naming);
}

type StandingWords = (state: ModuleState, card: ReleaseCard, day: DayWords) => string;

/** How one stands, as a sentence. */
const standingWords: { readonly [Each in Standing]: StandingWords } = {
  "not begun": () => t`Not begun.`,
  "under way": () => t`Under way.`,
  "ready to be watched": () => t`Ready to be watched: hand your file to a mentor.`,
  "ready to be signed": () => t`Ready to be signed: hand your file to a mentor.`,
  "signed off": () => t`Signed off.`,
  "lapses soon": ({ until }, _, day) => t`Lapses after ${day(until!)}. Be watched again before.`,
  lapsed: ({ until }, _, day) => t`Lapsed after ${day(until!)}. Don’t work alone.`,
  withdrawn: () => t`Withdrawn. Don’t work alone; ask your mentor.`,
  "earlier revision": ({ revision }, card) =>
    t`Signed on revision ${revision ?? "before"}; the sheet is now revision ${card.revision}. Don’t work alone by it.`,
  suspended: () => t`Suspended: a module that it needs does not hold. Don’t work alone.`,
  unconfirmed: () =>
    t`Can’t be confirmed: the list of what your mentor has withdrawn is missing or out of date. Open this page on the programme’s site.`,
};

export const standingSentence: StandingWords = (state, card, day) =>
  standingWords[state.standing](state, card, day);
