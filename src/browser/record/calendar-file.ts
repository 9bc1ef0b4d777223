import { t } from "../../engine/words.ts";

/** What lapses, as an iCalendar file (RFC 5545) for the calendar of a phone. */

export interface Lapse {
  readonly module: string;
  readonly title: string;
  /** YYYY-MM-DD: the last day on which the sign-off holds. */
  readonly until: string;
}

export interface CalendarOptions {
  readonly programme: string;
  /** did:key of the owner: tells two people's entries apart in one calendar. */
  readonly owner: string;
  readonly lapses: readonly Lapse[];
  /** Days before in which the calendar is to remind. */
  readonly soonDays: number;
  /** RFC 3339 in UTC. */
  readonly now: string;
}

/** One whole day each. Lines end in CR LF and have at most 75 octets (section 3.1). */
export function calendarFile(options: CalendarOptions): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Benchwright//Competency record//EN",
    ...options.lapses.flatMap((lapse) => entry(lapse, options)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

function entry(
  { module, title, until }: Lapse,
  { programme, owner, soonDays, now }: CalendarOptions,
): string[] {
  const summary = escaped(t`Sign-off lapses: ${title}`);
  return [
    "BEGIN:VEVENT",
    `UID:${module}-${until}-${owner.slice(-12)}@benchwright.invalid`,
    `DTSTAMP:${now.slice(0, 19).replaceAll(/[-:]/g, "")}Z`,
    `DTSTART;VALUE=DATE:${until.replaceAll("-", "")}`,
    `SUMMARY:${summary}`,
    `DESCRIPTION:${escaped(t`${programme}: the last day on which the sign-off holds. Ask a mentor to watch you before.`)}`,
    "TRANSP:TRANSPARENT",
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${summary}`,
    `TRIGGER:-P${soonDays}D`,
    "END:VALARM",
    "END:VEVENT",
  ];
}

/** A value of the type TEXT (section 3.3.11). */
export const escaped = (text: string): string =>
  text.replaceAll(/[\\;,]/g, (sign) => `\\${sign}`).replaceAll(/\r\n|\r|\n/g, "\\n");

const longest = 75;

/** A long line as several, each but the first beginning with a space. Characters stay whole. */
export function folded(line: string): string {
  const encoder = new TextEncoder();
  let length = 0;
  let text = "";
  for (const sign of line) {
    const octets = encoder.encode(sign).length;
    if (length + octets > longest) {
      text += "\r\n ";
      length = 1;
    }
    text += sign;
    length += octets;
  }
  return text;
}
