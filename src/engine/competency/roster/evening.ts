/** Who may work tonight, with these people in the room. */
import { holds } from "../needs.ts";
import { readiness } from "../readiness.ts";
import type { ReleaseCard } from "../release.ts";
import type { Mentor } from "../rules.ts";
import type { Situation } from "../situation.ts";
import type { ModuleState } from "../state.ts";
import type { RosterRow } from "./row.ts";

export interface EveningInput {
  /** The people present. */
  readonly rows: readonly RosterRow[];
  /** Ids of the mentors present. */
  readonly mentors: ReadonlySet<string>;
  readonly situation: Situation;
}

export interface EveningModule {
  readonly module: string;
  readonly title: string;
  /** Of the mentors present those who may watch over this module. */
  readonly mentors: readonly Mentor[];
  /** May work alone tonight. */
  readonly alone: readonly RosterRow[];
  /** May work alone, but not tonight: the module asks for a mentor in the room, and there is none for it. */
  readonly waiting: readonly RosterRow[];
  /** May do it under a mentor's eye: the theory is done. Nobody where no mentor is present. */
  readonly underEye: readonly RosterRow[];
  /** How many of those the mentors present may watch over at a time; undefined where no rule says. */
  readonly places: number | undefined;
}

/** By module, in the programme's order; modules with which nobody present could do anything are left out. O(people · modules). */
export function evening({ rows, mentors, situation }: EveningInput): EveningModule[] {
  return [...situation.releases.cards.values()]
    .map((card) => eveningWith(card, rows, mentorsFor(card.module, mentors, situation)))
    .filter(({ alone, waiting, underEye }) => alone.length + waiting.length + underEye.length > 0);
}

function mentorsFor(module: string, present: ReadonlySet<string>, { rules, on }: Situation): Mentor[] {
  const able = rules.mentors.filter(
    ({ id, from, to, maySign }) =>
      present.has(id) &&
      from <= on &&
      (to === undefined || on <= to) &&
      (maySign === "all" || maySign.includes(module)),
  );
  return [...new Map(able.map((mentor) => [mentor.id, mentor])).values()];
}

function eveningWith(
  card: ReleaseCard,
  rows: readonly RosterRow[],
  mentors: readonly Mentor[],
): EveningModule {
  const { module, title, rules } = card;
  const holders = rows.filter(({ states }) => holds(states.get(module)));
  const mayAlone = !rules.mentorPresent || mentors.length > 0;
  const { traineesPerMentor } = rules;
  return {
    ...{ module, title, mentors },
    alone: mayAlone ? holders : [],
    waiting: mayAlone ? [] : holders,
    underEye:
      mentors.length === 0 ? [] : rows.filter((row) => isForEye(row, row.states.get(module), mentors)),
    places: traineesPerMentor === undefined ? undefined : traineesPerMentor * mentors.length,
  };
}

/** Nobody watches over themself, so somebody else must be there to do it. */
function isForEye({ keys }: RosterRow, state: ModuleState | undefined, mentors: readonly Mentor[]): boolean {
  if (state === undefined || holds(state)) return false;
  if (state.level !== "under eye" && readiness(state.missing) === undefined) return false;
  return mentors.some(({ ownRecords, key }) => !keys.some((own) => own === key || ownRecords.includes(own)));
}
