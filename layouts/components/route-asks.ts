/** What a sign-off asks for, in words. */
import type { SignOffRules } from "../../src/engine/competency/rules.ts";
import { plural, t } from "../../src/engine/words.ts";
import type { ModuleCard } from "../../src/model/site.ts";
import { numberWords, percent } from "../words.ts";

type Ask = (card: ModuleCard) => string | false;

const isWatched = ({ rules }: ModuleCard): boolean => rules.watched + rules.unaided > 0;

/** In the order of work. */
const asks: readonly Ask[] = [
  ({ questions, hasKey, rules }) =>
    questions > 0 &&
    (hasKey
      ? t`quiz passed with ${percent(rules.pass)}`
      : t`quiz passed with ${percent(rules.pass)}, a mentor in the room`),
  ({ practices, rules }) =>
    rules.practice &&
    practices > 0 &&
    plural(practices, t`the practice put right`, t`its ${practices} practices put right`),
  ({ steps, rules }) => rules.dryRun && steps.length > 0 && t`performed on paper without a critical stop`,
  ({ rules: { watched } }) => watched > 0 && plural(watched, t`watched once`, t`watched ${watched} times`),
  ({ rules: { unaided } }) =>
    unaided > 0 && plural(unaided, t`watched doing it unaided`, t`watched doing it unaided ${unaided} times`),
  (card) => isWatched(card) && card.rules.occasions > 1 && t`on ${card.rules.occasions} different days`,
  (card) => isWatched(card) && card.rules.mentors > 1 && t`by ${card.rules.mentors} different mentors`,
];

/** What must have been done and watched for this module; empty where nothing is asked. */
export const asksOf = (card: ModuleCard): string[] =>
  asks.map((ask) => ask(card)).filter((text) => text !== false);

/** What every one of several modules asks for; of a single module all is its own. O(modules · asks). */
export function asksOfAll(cards: readonly ModuleCard[]): string[] {
  const [first, ...others] = cards.map(asksOf);
  if (first === undefined || others.length === 0) return [];
  return first.filter((ask) => others.every((asked) => asked.includes(ask)));
}

type Standing = (rules: SignOffRules) => string | false;

/** What holds of the person, the room and the time. */
const standings: readonly Standing[] = [
  ({ minimumAge }) => minimumAge !== undefined && t`at least ${minimumAge} years old`,
  ({ induction }) => induction !== undefined && induction,
  ({ mentorPresent }) => mentorPresent && t`a mentor is in the room, also for who is signed off`,
  ({ traineesPerMentor }) =>
    traineesPerMentor !== undefined && t`a mentor watches over ${traineesPerMentor} trainees at most`,
  ({ months }) =>
    months !== undefined &&
    plural(
      months,
      t`a sign-off holds for ${numberWords(months)} month`,
      t`a sign-off holds for ${numberWords(months)} months`,
    ),
];

/** What the rules ask of everybody; those rules that `known` says already are left out. */
export function standingAsks(rules: SignOffRules, known?: SignOffRules): string[] {
  const said = (standing: Standing) => standing(rules);
  return standings
    .map(said)
    .filter((text) => text !== false)
    .filter((text) => known === undefined || !standingAsks(known).includes(text));
}
