/** Dates of a call. */
import { dayOf, isDate } from "../../engine/competency/calendar.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { type Call, WrongCall } from "../command.ts";

export const onOption = {
  type: "string",
  value: "DATE",
  help: "as things stand at the end of that day: 2026-11-20 (default: today)",
} as const;

export interface Day {
  readonly on: string;
  /** The day on which lists of withdrawals must be in date. */
  readonly listsOn: string;
}

/** The day asked for, or today. What lies ahead is told by the lists of today. */
export function dayOfCall(on: string | undefined, { timeZone }: Pick<RecordRules, "timeZone">): Day {
  const now = today(timeZone);
  return { on: on ?? now, listsOn: on === undefined || on > now ? now : on };
}

export const today = (timeZone: string): string => dayOf(Date.now(), timeZone);

/** The date given under an option; undefined where it is not given. Throws a WrongCall for what is no date. */
export function dateOf(call: Call, option: string): string | undefined {
  const written = call.text(option);
  if (written === undefined || isDate(written)) return written;
  throw new WrongCall(`--${option} "${written.slice(0, 60)}" is no date; write it as 2026-11-20.`);
}
