/** Thread designations as people write them. */

import { t } from "../words.ts";
import { spellFractions } from "./numeral.ts";
import { bad, good, type Result } from "./result.ts";
import { nearestByFigures, nearestByLetters, type Wanted } from "./threads/nearest.ts";
import { sizesOf } from "./threads/series.ts";
import type { ThreadSize } from "./threads/size.ts";
import { seriesWords } from "./threads/size.ts";
import { readWanted } from "./threads/written.ts";

export interface Designation extends ThreadSize {
  readonly leftHand: boolean;
  /** Tolerance class where one is written: 6g, 2A. */
  readonly tolerance: string | undefined;
}

export type DesignationCode = "empty" | "too-long" | "not-a-thread" | "series-missing" | "unknown-size";

const inInches = ["UNC", "UNF", "BSW", "BSF"] as const;

/** Longer than any designation, so that hostile text costs nothing. */
const longest = 50;

/**
 * Reads a thread: `M6`, `M6x1`, `M6 × 0.75`, `1/4-20 UNC`, `1/4 in BSF`, `#8-32`, `2 BA`, `1/4" Whitworth`; then, if
 * written, a tolerance class (`-6g`, `-2A`) and `LH`. A metric size without a pitch is the coarse one (ISO 965-1). A size
 * in inches with threads per inch and no series (`1/4-20`) is a Unified one (ASME B1.1); with neither it is refused,
 * since 1/4 in may be any of four. Only sizes of the tables in `threads/` are known; a problem names the nearest.
 */
export function parseDesignation(text: string): Result<Designation, DesignationCode> {
  if (text.trim() === "") return bad("empty", "nothing", t`a thread such as M6, 1/4-20 UNC or 2 BA`);
  if (text.length > longest) return bad("too-long", text, t`at most ${longest} characters`);
  const { core, tolerance, leftHand } = withoutTail(tidy(text));
  const wanted = readWanted(core);
  if (!wanted) return unreadable(text, core);
  const size = sizesOf(wanted.series).find((each) => fits(each, wanted));
  return size ? good({ ...size, tolerance, leftHand }) : unknownSize(text, wanted);
}

/** What decimal and binary fractions of the same figure may differ by. */
const rounding = 1e-9;

function fits(size: ThreadSize, wanted: Wanted): boolean {
  return (
    Math.abs(size.diameterMm - wanted.diameterMm) <= wanted.slackMm + rounding &&
    (wanted.pitchMm === undefined ? !size.pitchNeeded : Math.abs(size.pitchMm - wanted.pitchMm) <= rounding)
  );
}

function tidy(text: string): string {
  return spellFractions(text)
    .normalize("NFKC")
    .replace(/[⁄∕]/g, "/")
    .replace(/[×✕]/g, "x")
    .replace(/[–—‐−]/g, "-")
    .replace(/[″”“]|′′|''/g, '"')
    .replace(/\s+/g, " ")
    .trim();
}

interface Tail {
  readonly core: string;
  readonly tolerance: string | undefined;
  readonly leftHand: boolean;
}

function withoutTail(text: string): Tail {
  const hand = /[\s-]+(?:LH|left[- ]?hand)$/i.exec(text);
  const right = hand ? text.slice(0, hand.index) : text;
  const metric = /^(M.*?)\s*-\s*((?:\d{1,2}[EFGH]){1,2})$/i.exec(right);
  const unified = /^(.*UN[CF])[\s-]*([123][AB])$/i.exec(right);
  const [, core = right, tolerance] = metric ?? unified ?? [];
  return { core, tolerance, leftHand: hand !== null };
}

function unreadable(text: string, core: string): Result<never, DesignationCode> {
  const inch = readWanted(t`${core} UNC`);
  if (inch) {
    const known = sizesOf(inInches).filter((size) => fits(size, { ...inch, pitchMm: undefined }));
    const written = known.map(({ designation }) => designation).join(", ") || t`1/4-20 UNC or 1/4 in BSF`;
    return bad("series-missing", text, t`a size with its series, such as ${written}`, known[0]?.designation);
  }
  const near = nearestByLetters(sizesOf(), core)?.designation;
  return bad("not-a-thread", text, near ?? t`a thread such as M6, 1/4-20 UNC or 2 BA`, near);
}

/** Where no series was written the thread may be one of BS 84: 1/4-26 is a BSF size. */
function unknownSize(text: string, wanted: Wanted): Result<never, "unknown-size"> {
  const series = wanted.series.length > 1 ? inInches : wanted.series;
  const near = nearestByFigures(sizesOf(series), wanted)!.designation;
  return bad(
    "unknown-size",
    text,
    t`a size of the ${series.map(seriesWords).join(", ")} tables; the nearest is ${near}`,
    near,
  );
}
