/** The ways in which people write a thread. */

import { readNumeral } from "../numeral.ts";
import { britishAssociation } from "./british-association.ts";
import type { Wanted } from "./nearest.ts";
import { inchesOf, mmPerInch, type SeriesName } from "./size.ts";

/** Names of series in inches, wherever they stand in the text. NC and NF are what Unified threads were before 1949. */
const inchSeries: readonly { readonly word: RegExp; readonly name: SeriesName }[] = [
  { word: /\b(?:U\.?)?N\.?C\b\.?/i, name: "UNC" },
  { word: /\b(?:U\.?)?N\.?F\b\.?/i, name: "UNF" },
  { word: /\b(?:B\.?S\.?W\b\.?|Whit(?:worth)?\b\.?)/i, name: "BSW" },
  { word: /\bB\.?S\.?F\b\.?/i, name: "BSF" },
];

/** A size in decimals of an inch is written to a thousandth: 0.312 is 5/16. */
const halfThou = 0.0005;

const forms: readonly ((text: string) => Wanted | undefined)[] = [metric, britishNumber, inch];

/** What a text asks for; undefined where it is not a thread in any of the ways known. */
export function readWanted(text: string): Wanted | undefined {
  for (const form of forms) {
    const wanted = form(text);
    if (wanted) return wanted;
  }
  return undefined;
}

/** `M6`, `M6x1`, `m 3,5 x 0.6`. */
function metric(text: string): Wanted | undefined {
  const match = /^M\s*([\d.,]+)(?:\s*[x*]\s*([\d.,]+))?(?:\s*mm)?$/i.exec(text);
  if (!match) return undefined;
  return wantedOf(["ISO metric"], number(match[1]!), match[2] === undefined ? undefined : number(match[2]));
}

/** `2 BA`, `2BA`, `No. 2 B.A.`, `BA 2`. */
function britishNumber(text: string): Wanted | undefined {
  const match =
    /^(?:no\.?\s*|#)?(\d{1,2})[\s-]*B\.?A\.?$/i.exec(text) ??
    /^B\.?A\.?\s*(?:no\.?\s*|#)?(\d{1,2})$/i.exec(text);
  if (!match) return undefined;
  return wantedOf(["BA"], britishDiameter(match[1]!), undefined);
}

/** Beyond the table the standard's own formula serves to find what is nearest. */
function britishDiameter(number: string): number {
  const known = britishAssociation().sizes.find(({ size }) => size === String(Number(number)));
  return known?.diameterMm ?? 6 * 0.9 ** (1.2 * Number(number));
}

/** `1/4-20 UNC`, `1/4 in BSF`, `#8-32`, `BSW 1/4"`, `1/4 x 20 tpi Whitworth`. A whole number is a number size. */
function inch(text: string): Wanted | undefined {
  const named = inchSeries.filter(({ word }) => word.test(text));
  const rest = named.reduce((left, { word }) => left.replace(word, " "), text);
  const bare = rest
    .replace(inchMark, " ")
    .replace(/[\s-]+$/, "")
    .trim();
  const [, sized, tpi] = sizeAndThreads.exec(bare) ?? [];
  if (sized === undefined || named.length > 1 || (named.length === 0 && tpi === undefined)) return undefined;
  const inches = sizeInInches(sized, inchMark.test(rest));
  const pitch = tpi === undefined ? undefined : mmPerInch / number(tpi);
  const series = named.length === 1 ? [named[0]!.name] : (["UNC", "UNF"] as const);
  return wantedOf(series, inches * mmPerInch, pitch, halfThou * mmPerInch);
}

const inchMark = /\s*(?:in(?:ch)?\b\.?|")/i;

const sizeAndThreads =
  /^((?:no\.?|#)\s*\d{1,2}|\d+[\s-]+\d+\/\d+|\d+\/\d+|\d*\.\d+|\d{1,2})(?:(?:\s*[-x*]\s*|\s+)(\d+(?:\.\d+)?)(?:\s*tpi)?)?$/i;

function sizeInInches(text: string, marked: boolean): number {
  const numbered = /^(?:no\.?|#)\s*(\d+)$/i.exec(text) ?? (marked ? null : /^(\d+)$/.exec(text));
  return numbered ? inchesOf(`#${numbered[1]}`) : number(text);
}

function number(text: string): number {
  const read = readNumeral(text);
  return read.ok && read.value.rest === "" ? read.value.amount : Number.NaN;
}

function wantedOf(
  series: readonly SeriesName[],
  diameterMm: number,
  pitchMm: number | undefined,
  slackMm = 0,
): Wanted | undefined {
  const sound = diameterMm > 0 && (pitchMm === undefined || (pitchMm > 0 && Number.isFinite(pitchMm)));
  return sound ? { series, diameterMm, slackMm, pitchMm } : undefined;
}
