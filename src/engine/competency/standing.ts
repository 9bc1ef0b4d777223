/** How a person stands with each module on a date: a pure function of events, rules, releases, lists and the date. */
import { type Assessed, assess } from "./assessed.ts";
import { revisionKey } from "./facts.ts";
import { grouped } from "./grouped.ts";
import { isObservation } from "./judged.ts";
import { standingWith } from "./module-standing.ts";
import type { Primitives } from "./primitives.ts";
import type { CompetencyRecord } from "./record.ts";
import { type Situation, type SituationInput, situationOf } from "./situation.ts";
import type { ModuleState } from "./state.ts";
import { type JudgedSignOff, judgeSignOffs } from "./support.ts";

export interface StateInput extends SituationInput {
  /** As `readRecord` gave it. */
  readonly record: CompetencyRecord;
  readonly primitives: Primitives;
}

/** By module, all that the programme has. What `checkRecord` finds something against does not count. */
export function stateOf({ record, primitives, ...input }: StateInput): Map<string, ModuleState> {
  const situation = situationOf(input);
  return statesIn(assess(record, situation, primitives), situation);
}

/** The same, of a record that has been assessed in this situation. O(modules + events + observations · phases). */
export function statesIn(
  assessed: Assessed,
  situation: Situation,
  judged: readonly JudgedSignOff[] = judgeSignOffs(assessed, situation),
): Map<string, ModuleState> {
  const { cards } = situation.releases;
  const signOffs = grouped(judged, ({ signed }) => signed.statement.module);
  const observations = grouped(assessed.judged.filter(isObservation), ({ signed }) =>
    revisionKey(signed.statement),
  );
  const states = new Map<string, ModuleState>();
  for (const card of situation.inOrder) {
    const own = {
      signOffs: signOffs.get(card.module) ?? [],
      observations: observations.get(revisionKey(card)) ?? [],
      ...{ gathered: assessed.gathered, states },
    };
    states.set(card.module, standingWith(card, own, situation));
  }
  return new Map([...cards.keys()].map((module) => [module, states.get(module)!]));
}
