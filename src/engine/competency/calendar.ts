/** Dates in a programme's time zone. A date is YYYY-MM-DD and means its end there. */
import { readInstant, writeInstant } from "./instant.ts";

const dayLength = 86_400_000;

const formats = new Map<string, Intl.DateTimeFormat>();

/** Throws a RangeError for a time zone that is not known. */
function formatOf(timeZone: string): Intl.DateTimeFormat {
  const known = formats.get(timeZone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat("en-US", {
    calendar: "iso8601",
    numberingSystem: "latn",
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  });
  formats.set(timeZone, made);
  return made;
}

/** What comes before or after is dated as these, so that every date has four figures for its year, and a day before and after it. */
const [earliest, latest] = [Date.UTC(1000, 0, 3), Date.UTC(9999, 11, 29)];

/** The date at an instant (ms since 1970) in a time zone (IANA name). */
export function dayOf(instant: number, timeZone: string): string {
  const parts = new Map(
    formatOf(timeZone)
      .formatToParts(Math.min(latest, Math.max(earliest, instant)))
      .map(({ type, value }) => [type, value]),
  );
  return `${parts.get("year")}-${parts.get("month")}-${parts.get("day")}`;
}

/**
 * The instant (ms since 1970) with which the day after `date` begins. Found by halving, since zones skip and repeat hours, midnight
 * among them: local dates never run backwards. Zones lie within 14 hours ahead and 12 behind.
 */
export function endOfDay(date: string, timeZone: string): number {
  const midnight = startInUtc(date) + dayLength;
  let [before, after] = [midnight - 15 * 3_600_000, midnight + 15 * 3_600_000];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (dayOf(middle, timeZone) > date) after = middle;
    else before = middle;
  }
  return after;
}

/** True of a date that exists, as YYYY-MM-DD. */
export const isDate = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && readInstant(`${text}T00:00:00Z`) !== undefined;

export const addDays = (date: string, days: number): string =>
  writeInstant(startInUtc(date) + days * dayLength).slice(0, 10);

/** Days from one date to a later one; negative where it is earlier. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((startInUtc(to) - startInUtc(from)) / dayLength);

/** The same day of a later month, or its last where it is shorter: a month after 31 January is 28 February. */
export function addMonths(date: string, months: number): string {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number];
  const first = new Date(Date.UTC(2000, month - 1 + months, 1));
  first.setUTCFullYear(first.getUTCFullYear() + year - 2000);
  const length = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate();
  first.setUTCDate(Math.min(day, length));
  return writeInstant(first.getTime()).slice(0, 10);
}

/** When a sign-off ends that is made at `from` (ms) and holds so many months: with the end of the last day. As it is signed. */
export const endOfMonths = (from: number, months: number, timeZone: string): string =>
  writeInstant(endOfDay(addMonths(dayOf(from, timeZone), months), timeZone));

/** A second, because many write the end of a day as 23:59:59. */
export const grace = 1000;

/** The last day that something holds which is valid until an instant (ms): the last whose end it reaches. */
export const lastDay = (until: number, timeZone: string): string =>
  addDays(dayOf(until + grace, timeZone), -1);

/** ms since 1970; the date must exist. */
function startInUtc(date: string): number {
  const start = readInstant(`${date}T00:00:00Z`);
  if (start === undefined) throw new RangeError(`${date} is no date; expected one like 2026-11-27`);
  return start;
}
