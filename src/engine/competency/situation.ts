/** What a record is judged by: rules, releases, lists of withdrawals, and a date. */
import { endOfDay, grace } from "./calendar.ts";
import { grouped } from "./grouped.ts";
import { inOrderOfNeed } from "./needs.ts";
import type { ReleaseCard } from "./release.ts";
import type { Releases } from "./releases.ts";
import type { Mentor, RecordRules } from "./rules.ts";
import type { StatusList as SignedList } from "./status-list.ts";

/** A mentor's list of withdrawals, whose signature has been checked (`readStatusList`). */
export type StatusList = Pick<SignedList, "issuer" | "id" | "isSet" | "validUntil">;

export interface SituationInput {
  readonly rules: RecordRules;
  readonly releases: Releases;
  /** Of all mentors, from the programme, and any that the record has kept: what one of them withdraws stays withdrawn. */
  readonly statuses: readonly StatusList[];
  /** YYYY-MM-DD: a date means its end in the programme's time zone. */
  readonly on: string;
  /** The date on which lists must not have expired. `on` where nothing is said; today for finding whom a recall touches later. */
  readonly listsOn?: string | undefined;
}

export interface Situation {
  readonly rules: RecordRules;
  readonly releases: Releases;
  /** The modules, each after those that it needs. */
  readonly inOrder: readonly ReleaseCard[];
  readonly on: string;
  /** ms since 1970: what happened at or after it is not known yet. */
  readonly end: number;
  /** The same of `listsOn`. */
  readonly listsEnd: number;
  /** By key; who was called again has several rows. */
  readonly mentors: ReadonlyMap<string, readonly Mentor[]>;
  readonly lists: ReadonlyMap<string, readonly StatusList[]>;
}

/** One for as many records as there are. Throws a RangeError for a date or a time zone that there is not. */
export function situationOf({ rules, releases, statuses, on, listsOn = on }: SituationInput): Situation {
  return {
    rules,
    releases,
    inOrder: inOrderOfNeed(releases.cards),
    on,
    end: endOfDay(on, rules.timeZone),
    listsEnd: endOfDay(listsOn, rules.timeZone),
    mentors: grouped(rules.mentors, ({ key }) => key),
    lists: grouped(statuses, ({ issuer }) => issuer),
  };
}

/** Whether something that is valid until an instant (ms) is over at the end of a day (ms). */
export const isOver = (until: number, end: number): boolean => until + grace < end;
