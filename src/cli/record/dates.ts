/** Dates of a call. */
import { dayOf, isDate } from "../../engine/competency/calendar.ts";
import { type Call, WrongCall } from "../command.ts";

export const onOption = {
  type: "string",
  value: "DATE",
  help: "as things stand at the end of that day: 2026-11-20 (default: today)",
} as const;

export const today = (timeZone: string): string => dayOf(Date.now(), timeZone);

/** The date given under an option; undefined where it is not given. Throws a WrongCall for what is no date. */
export function dateOf(call: Call, option: string): string | undefined {
  const written = call.text(option);
  if (written === undefined || isDate(written)) return written;
  throw new WrongCall(`--${option} "${written.slice(0, 60)}" is no date; write it as 2026-11-20.`);
}
