/** Dates of a call. */
import { dayOf, isDate } from "../../engine/competency/calendar.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { type Call, WrongCall } from "../command.ts";

export const onOption = {
  type: "string",
  value: "DATE",
  help: "as things stand at the end of that day: 2026-11-20 (default: today); what no list of withdrawals confirms for it does not count",
} as const;

export interface Day {
  readonly on: string;
  /** The day on which lists of withdrawals must be in date. */
  readonly listsOn: string;
}

/**
 * The day asked for, or today. Lists of withdrawals must be in date on that day too, so that nothing looks confirmed for a day
 * for which nobody can confirm it.
 */
export function dayOfCall(on: string | undefined, { timeZone }: Pick<RecordRules, "timeZone">): Day {
  const day = on ?? today(timeZone);
  return { on: day, listsOn: day };
}

/** The same for finding whom something touches: of a day that lies ahead everyone counts whom the lists of today confirm. */
export function dayOfRecall(from: string | undefined, rules: Pick<RecordRules, "timeZone">): Day {
  const { on } = dayOfCall(from, rules);
  const [listsOn] = [on, today(rules.timeZone)].sort();
  return { on, listsOn: listsOn! };
}

export const today = (timeZone: string): string => dayOf(Date.now(), timeZone);

/** The date given under an option; undefined where it is not given. Throws a WrongCall for what is no date. */
export function dateOf(call: Call, option: string): string | undefined {
  const written = call.text(option);
  if (written === undefined || isDate(written)) return written;
  throw new WrongCall(`--${option} "${written.slice(0, 60)}" is no date; write it as 2026-11-20.`);
}
