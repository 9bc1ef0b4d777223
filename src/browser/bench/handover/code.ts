/**
 * A place at the bench as a short text for an address: `1.MODULE.REVISION.BYTES`. The bytes are the time of taking (seconds),
 * a digest of the steps, the card, steps ticked off and checks ticked (a bit each), timers (step, end in seconds), a sum.
 */
import type { Kept } from "../../../model/page-data.ts";
import { fromText, toText } from "../../page/base64url.ts";
import { beginning, type Place } from "../place.ts";
import { type Timer, withTimer } from "../waits/timers.ts";
import { bytesOf, Reader, sumOf, writeNumber, writeTruths } from "./bytes.ts";

const version = "1";

/** The page on which a place is. */
export interface Sheet extends Kept {
  /** Ids of the steps, as written. */
  readonly steps: readonly string[];
  /** Ids of the cards: one before the steps, the steps, one after. */
  readonly cards: readonly string[];
}

export interface Handed {
  readonly place: Place;
  /** Milliseconds since 1970, by the other device's clock. */
  readonly takenAt: number;
}

/** Why a text is not taken: another format, module, revision or text of the steps, or it is not whole. `found` is what it says. */
export interface Refused {
  readonly refused: "version" | "module" | "revision" | "steps" | "damaged";
  readonly found: string;
}

export const isRefused = (answer: Handed | Refused): answer is Refused => "refused" in answer;

/** The place by `now` (milliseconds since 1970). Times are kept to the second. */
export function packPlace(place: Place, sheet: Sheet, now: number): string {
  const bytes: number[] = [];
  const numbers = new Map(sheet.steps.map((id, i) => [id, i]));
  const timers = place.timers.filter(({ step, ends }) => numbers.has(step) && ends >= 0);
  writeNumber(bytes, toSeconds(now));
  writeNumber(bytes, digestOf(sheet));
  writeNumber(bytes, Math.max(0, sheet.cards.indexOf(place.card)));
  for (const ids of [place.done, place.checked])
    writeTruths(
      bytes,
      sheet.steps.map((id) => ids.has(id)),
    );
  writeNumber(bytes, timers.length);
  for (const { step, ends } of timers) {
    writeNumber(bytes, numbers.get(step)!);
    writeNumber(bytes, toSeconds(ends));
  }
  const head = `${version}.${sheet.module}.${sheet.revision}.`;
  return head + toText([...bytes, ...sumAsBytes([...bytesOf(head), ...bytes])]);
}

/** Never throws, whatever the text is. */
export function unpackPlace(text: string, sheet: Sheet): Handed | Refused {
  const [edition = "", module = "", revision = "", body = "", ...more] = text.split(".");
  if (/^\d{1,6}$/.test(edition) && edition !== version) return { refused: "version", found: edition };
  const damaged: Refused = { refused: "damaged", found: "" };
  const bytes = fromText(body);
  if (edition !== version || more.length > 0 || bytes === undefined || toText(bytes) !== body) return damaged;
  if (!isWhole(`${edition}.${module}.${revision}.`, bytes)) return damaged;
  if (module !== sheet.module) return { refused: "module", found: module };
  if (revision !== String(sheet.revision)) return { refused: "revision", found: revision };
  return readBody(new Reader(bytes.slice(0, -sumBytes)), sheet) ?? damaged;
}

const sumBytes = 4;

function sumAsBytes(bytes: readonly number[]): number[] {
  const sum = sumOf(bytes);
  return [sum >>> 24, (sum >>> 16) & 0xff, (sum >>> 8) & 0xff, sum & 0xff];
}

/** The sum at the end is that of all before it. */
function isWhole(head: string, bytes: readonly number[]): boolean {
  const sum = sumAsBytes([...bytesOf(head), ...bytes.slice(0, -sumBytes)]);
  return bytes.length > sumBytes && sum.every((byte, i) => byte === bytes[bytes.length - sumBytes + i]);
}

function readBody(reader: Reader, sheet: Sheet): Handed | Refused | undefined {
  const { steps, cards } = sheet;
  const takenAt = reader.number() * 1000;
  if (reader.number() !== digestOf(sheet)) return reader.ok ? { refused: "steps", found: "" } : undefined;
  const card = cards[reader.number()];
  const done = ticked(reader, steps);
  const checked = ticked(reader, steps);
  const timers = readTimers(reader, steps);
  if (!reader.ok || !reader.isAtEnd || card === undefined || timers === undefined || !isMoment(takenAt))
    return undefined;
  return { takenAt, place: { ...beginning(card), done, checked, timers } };
}

const ticked = (reader: Reader, steps: readonly string[]): ReadonlySet<string> => {
  const truths = reader.truths(steps.length);
  return new Set(steps.filter((_, i) => truths[i]));
};

function readTimers(reader: Reader, steps: readonly string[]): readonly Timer[] | undefined {
  const count = reader.number();
  if (count > steps.length) return undefined;
  let timers: readonly Timer[] = [];
  for (let i = 0; i < count; i++) {
    const step = steps[reader.number()];
    const ends = reader.number() * 1000;
    if (!reader.ok || step === undefined || !isMoment(ends)) return undefined;
    timers = withTimer(timers, { step, ends, isTold: false });
  }
  return timers;
}

/** A date of JavaScript reaches so far. */
const isMoment = (ms: number): boolean => ms <= 8.64e15;

const toSeconds = (ms: number): number => Math.max(0, Math.ceil(ms / 1000));

/** Two copies of a page of one revision may still have other steps. 16 bits are enough to notice it. */
const digestOf = ({ steps }: Sheet): number => sumOf(bytesOf(steps.join(" "))) & 0xffff;
