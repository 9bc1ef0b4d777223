/** Dates in words, in the language of the page. */

export type DayWords = (day: string) => string;

/** Of dates as YYYY-MM-DD: "27 Nov 2026". */
export function dayWords(language: string): DayWords {
  const format = new Intl.DateTimeFormat(language, {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  });
  return (day) => format.format(new Date(`${day}T00:00:00Z`));
}
