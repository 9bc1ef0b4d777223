/** What a record comes to today, by the rules of its programme. No page. */
import { type Assessed, assess } from "../../engine/competency/assessed.ts";
import { dayOf } from "../../engine/competency/calendar.ts";
import type { RecordEvent } from "../../engine/competency/event.ts";
import { isEvidence } from "../../engine/competency/evidence.ts";
import { portable } from "../../engine/competency/libraries.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { Releases } from "../../engine/competency/releases.ts";
import { type Situation, situationOf } from "../../engine/competency/situation.ts";
import { statesIn } from "../../engine/competency/standing.ts";
import type { ModuleState } from "../../engine/competency/state.ts";
import type { StatusList } from "../../engine/competency/status-list.ts";
import { type JudgedSignOff, judgeSignOffs } from "../../engine/competency/support.ts";
import type { ModuleData, ProgrammeData } from "../../model/record-data.ts";

export interface Overview {
  readonly record: CompetencyRecord;
  readonly programme: ProgrammeData;
  readonly situation: Situation;
  readonly assessed: Assessed;
  readonly states: ReadonlyMap<string, ModuleState>;
  /** Every sign-off with what is against it, newest first. */
  readonly signOffs: readonly JudgedSignOff[];
}

export interface OverviewInput {
  readonly record: CompetencyRecord;
  readonly programme: ProgrammeData;
  /** Of the modules that the record has evidence on. */
  readonly modules: readonly ModuleData[];
  readonly statuses: readonly StatusList[];
  /** ms since 1970. */
  readonly now: number;
}

/** O(size of the record and of the modules that it has evidence on). */
export function overviewOf({ record, programme, modules, statuses, now }: OverviewInput): Overview {
  const { rules, modules: cards } = programme;
  const kept = modules.flatMap(({ release, earlier }) => [release, ...earlier]);
  const on = dayOf(now, rules.timeZone);
  const situation = situationOf({ rules, releases: new Releases(cards, kept), statuses, on });
  const assessed = assess(record, situation, portable);
  const signOffs = judgeSignOffs(assessed, situation).sort((a, b) => b.signed.from - a.signed.from);
  return { record, programme, situation, assessed, states: statesIn(assessed, situation), signOffs };
}

/** Ids of the modules whose data are needed to mark what the record holds again. */
export function modulesToLoad({ events }: CompetencyRecord, cards: readonly ReleaseCard[]): string[] {
  const known = new Set(cards.map(({ module }) => module));
  const named = events.map(moduleOf).filter((module) => module !== undefined);
  return [...new Set(named)].filter((module) => known.has(module));
}

const moduleOf = (event: RecordEvent): string | undefined => (isEvidence(event) ? event.module : undefined);
