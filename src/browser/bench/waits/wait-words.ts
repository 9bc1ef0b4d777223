/** Times of waits in words. */
import { counted, language, t } from "../../../engine/words.ts";

const second = 1000;
const minute = 60 * second;
const hour = 60 * minute;
const day = 24 * hour;

/** What is left, in milliseconds: seconds below an hour, then minutes, hours from two days on; what is begun counts. */
export function leftWords(left: number): string {
  if (left < hour - second) return shortWords(Math.ceil(left / second));
  if (left < 2 * day - minute) {
    const minutes = Math.ceil(left / minute);
    return together(t`${Math.floor(minutes / 60)} h`, minutes % 60, t`${minutes % 60} min`);
  }
  const hours = Math.ceil(left / hour);
  return together(counted(Math.floor(hours / 24), "day"), hours % 24, t`${hours % 24} h`);
}

function shortWords(seconds: number): string {
  if (seconds < 60) return t`${seconds} s`;
  return together(t`${Math.floor(seconds / 60)} min`, seconds % 60, t`${seconds % 60} s`);
}

const together = (large: string, rest: number, small: string): string =>
  rest === 0 ? large : `${large} ${small}`;

/** The time on the clock; with the day where that is not the day of `now`. `zone` is the device's where it is not given. */
export function clockWords(at: number, now: number, zone?: string): string {
  const format = (options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
    new Intl.DateTimeFormat(language, { ...options, ...(zone === undefined ? {} : { timeZone: zone }) });
  const date = format({ dateStyle: "short" });
  const time = { hour: "2-digit", minute: "2-digit", hourCycle: "h23" } as const;
  const isToday = date.format(at) === date.format(now);
  return format(isToday ? time : { ...time, weekday: "short", day: "numeric", month: "short" }).format(at);
}

/** A wait as it is told wherever one is. */
export interface WaitTold {
  /** Of the step after which one waits. */
  readonly number: number;
  readonly dries: boolean;
  readonly left: number;
  /** When it ends or ended, on the clock. */
  readonly clock: string;
}

/** "Drying after step 14: 1 h 59 min left, until 15:20." */
export function waitWords({ number, dries, left, clock }: WaitTold): string {
  const rest = leftWords(left);
  if (left === 0)
    return dries
      ? t`Drying after step ${number}: over since ${clock}.`
      : t`Wait after step ${number}: over since ${clock}.`;
  return dries
    ? t`Drying after step ${number}: ${rest} left, until ${clock}.`
    : t`Wait after step ${number}: ${rest} left, until ${clock}.`;
}

/** What is announced when it ends. */
export function overWords({ number, dries, clock }: WaitTold): string {
  return dries
    ? t`The drying after step ${number} is over (${clock}).`
    : t`The wait after step ${number} is over (${clock}).`;
}
