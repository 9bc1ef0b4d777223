/** Numbers, times, dates and lists as they are written on a page. */

import { counted, numberWords, t } from "../src/engine/words.ts";

export { counted, dateWords as date, listed, numberWords } from "../src/engine/words.ts";

/** Minutes as "5 min", "2 h", "2 h 30 min", "3 days" (whole days from two on). */
export function duration(minutes: number): string {
  if (minutes >= 2880 && minutes % 1440 === 0) return counted(minutes / 1440, "day");
  const hours = Math.floor(minutes / 60);
  const rest = Math.round((minutes - hours * 60) * 10) / 10;
  return [hours > 0 && t`${hours} h`, (rest > 0 || hours === 0) && t`${numberWords(rest)} min`]
    .filter(Boolean)
    .join(" ");
}

/** 0.8 as "80 %", to a tenth. */
export const percent = (fraction: number): string => `${numberWords(Math.round(fraction * 1000) / 10)} %`;

/** With a capital letter first. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Ends a phrase as a sentence, unless it ends as one already. */
export function sentence(text: string): string {
  return /[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
}
