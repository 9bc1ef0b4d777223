/** Instants, as milliseconds since 1970 and as RFC 3339 writes them: with zone, of a day that there is. */

const pattern =
  /^(\d{4})-(\d{2})-(\d{2})T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d{1,9})?(?:Z|[+-](?:0\d|1[0-4]):[0-5]\d)$/;

/** Milliseconds since 1970; undefined of a time without zone, of no such day, or with a leap second. */
export function readInstant(text: string): number | undefined {
  const [, year, month, day] = pattern.exec(text) ?? [];
  if (year === undefined) return undefined;
  const midnight = new Date(`${year}-${month}-${day}T00:00:00Z`);
  const exists = !Number.isNaN(midnight.getTime()) && midnight.getUTCDate() === Number(day);
  return exists ? Date.parse(text) : undefined;
}

/** In UTC, to the millisecond: `2026-11-27T19:30:00.000Z`. */
export const writeInstant = (instant: number): string => new Date(instant).toISOString();

/** True of what `writeInstant` writes, and of nothing else. */
export function isWrittenInstant(text: string): boolean {
  const instant = readInstant(text);
  return instant !== undefined && writeInstant(instant) === text;
}
