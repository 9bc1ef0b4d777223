/** What is watched on an evening: one phase of a module, or a module as a whole. */
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { type SheetCheck, sheetOf } from "../desk/sheet.ts";

export interface EveningTask {
  readonly card: ReleaseCard;
  /** "" where it is the whole module. */
  readonly phase: string;
  readonly title: string;
  readonly checks: readonly SheetCheck[];
}

/** In the order of the programme: each phase, and the whole. */
export function tasksOf(cards: Iterable<ReleaseCard>): EveningTask[] {
  return [...cards].flatMap((card) => {
    const sheet = sheetOf(card);
    const whole = { card, phase: "", title: card.title, checks: sheet.flatMap(({ checks }) => checks) };
    const phases = card.phases.length < 2 ? [] : sheet;
    return [
      ...phases.map(({ id, title, checks }) => ({
        card,
        phase: id,
        title: `${card.title}: ${title}`,
        checks,
      })),
      whole,
    ];
  });
}

/** As an observation names them. */
export const phasesOf = ({ card, phase }: EveningTask): string[] =>
  phase === "" ? card.phases.map(({ id }) => id) : [phase];

export const taskKey = ({ card, phase }: EveningTask): string => `${card.module} ${phase}`;
