/** Dates in words, in the language of the page. */

export type DayWords = (day: string) => string;

/** Where it is only said that the language is English, the day comes before the month, as on the sheets. */
export const dateLanguage = (language: string): string => (language === "en" ? "en-GB" : language);

/** Of dates as YYYY-MM-DD: "27 Nov 2026". */
export function dayWords(language: string): DayWords {
  const format = new Intl.DateTimeFormat(dateLanguage(language), {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  });
  return (day) => format.format(new Date(`${day}T00:00:00Z`));
}
