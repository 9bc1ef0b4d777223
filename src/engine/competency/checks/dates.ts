import { t } from "../../words.ts";
import { lastDay } from "../calendar.ts";
import { problem } from "../problem.ts";
import { isOver } from "../situation.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

export const notYetValid: Check = (signed, { on, end }) =>
  signed.from < end
    ? undefined
    : problem(
        "not-yet-valid",
        t`${called(signed)} holds only from ${signed.statement.validFrom}, which is after the end of ${on}. Look again after that day; if the date is a slip or the clock of the device was wrong, ask the mentor to sign again.`,
      );

export const lapsed: Check = (signed, { on, end, rules }) => {
  if (signed.until === undefined || !isOver(signed.until, end)) return undefined;
  return problem(
    "lapsed",
    t`${called(signed)} held until ${lastDay(signed.until, rules.timeZone)} and has lapsed on ${on}. Be watched again and have it signed anew before working alone.`,
  );
};
