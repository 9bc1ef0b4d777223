/** How strong a screw is, by the class that is marked on it or the material that it is of. */

import { t } from "../../words.ts";
import { nearestName } from "../edit-distance.ts";
import { bad, good, type Result } from "../result.ts";

/** Graded: the bolts that are made to be tightened to most of their yield (8.8 to 12.9). */
export type StrengthKind = "graded" | "soft" | "stainless" | "brass";

/** Stresses in MPa. */
export interface Strength {
  readonly name: string;
  readonly kind: StrengthKind;
  readonly tensile: number;
  /** ReL, Rp0.2 or Rpf. */
  readonly yield: number;
  /** Proof stress Sp, where the standard has one. */
  readonly proof: number | undefined;
  readonly source: string;
}

interface Row {
  readonly name: string;
  readonly kind: StrengthKind;
  /** Sizes for which the row holds: above and up to these diameters, mm. */
  readonly above: number;
  readonly upTo: number;
  readonly tensile: number;
  readonly yield: number;
  readonly proof: number | undefined;
}

type Figures = readonly [tensile: number, yielding: number, proof?: number];

const largest = 39;

function row(name: string, kind: StrengthKind, figures: Figures, above = 0, upTo = largest): Row {
  return { name, kind, above, upTo, tensile: figures[0], yield: figures[1], proof: figures[2] };
}

/** ISO 898-1:2013, Table 3: Rm min, yield min, Sp. From memory, checked by its published loads. */
const carbon: readonly Row[] = [
  row("4.6", "soft", [400, 240, 225]),
  row("4.8", "soft", [420, 340, 310]),
  row("5.6", "soft", [500, 300, 280]),
  row("5.8", "soft", [520, 420, 380]),
  row("6.8", "soft", [600, 480, 440]),
  row("8.8", "graded", [800, 640, 580], 0, 16),
  row("8.8", "graded", [830, 660, 600], 16),
  row("9.8", "graded", [900, 720, 650], 0, 16),
  row("10.9", "graded", [1040, 940, 830]),
  row("12.9", "graded", [1220, 1100, 970]),
];

/** ISO 3506-1: Rm min and Rp0.2 min of austenitic steels; from memory, checked by VDI 2230 tables of small screws. */
const stainless: readonly Row[] = ["A1", "A2", "A4"].flatMap((steel) => [
  row(`${steel}-50`, "stainless", [500, 210]),
  row(`${steel}-70`, "stainless", [700, 450]),
  row(`${steel}-80`, "stainless", [800, 600]),
]);

/** ISO 8839, CU2 and CU3: Rm published, Rp0.2 from memory. */
const brass: readonly Row[] = ["CU2", "CU3"].flatMap((name) => [
  row(name, "brass", [440, 340], 0, 6),
  row(name, "brass", [370, 250], 6),
]);

const rows = [...carbon, ...stainless, ...brass];

const sources: Readonly<Record<StrengthKind, string>> = {
  graded: t`ISO 898-1:2013, Table 3 (from memory, checked by its published loads)`,
  soft: t`ISO 898-1:2013, Table 3 (from memory, checked by its published loads)`,
  stainless: t`ISO 3506-1 (from memory, checked by published VDI 2230 tables of small screws)`,
  brass: t`ISO 8839 (tensile strength published, proof stress from memory)`,
};

export type StrengthCode = "unknown-class" | "class-size";

/** Every class that is known, once each. */
export function strengthNames(): string[] {
  return [...new Set(rows.map(({ name }) => name))];
}

/**
 * The strength of a class in a size: `8.8`, `A2-70` (`a2/70`), `CU2`, `brass` (CU2 and CU3 are alike). Refuses a class that is
 * not known, naming the nearest, and a size for which its standard has none.
 */
export function strengthOf(text: string, diameterMm: number): Result<Strength, StrengthCode> {
  const named = rows.filter(({ name }) => name === tidy(text));
  if (named.length === 0) return unknown(text);
  const found = named.find(({ above, upTo }) => above < diameterMm && diameterMm <= upTo);
  if (!found) {
    const limit = Math.max(...named.map(({ upTo }) => upTo));
    return bad("class-size", t`class ${named[0]!.name} in ${diameterMm} mm`, t`at most ${limit} mm`);
  }
  const { name, kind, tensile, yield: yielding, proof } = found;
  return good({ name, kind, tensile, yield: yielding, proof, source: sources[kind] });
}

function tidy(text: string): string {
  const plain = text
    .trim()
    .toUpperCase()
    .replace(/,/g, ".")
    .replace(/^CLASS\s+/, "");
  if (plain === "BRASS") return "CU2";
  return plain.replace(/^(A\d)[\s/-]*(\d+)$/, "$1-$2");
}

function unknown(text: string): Result<never, "unknown-class"> {
  const names = strengthNames();
  const known = t`one of ${names.join(", ")} or brass; an unmarked screw has none, and no figure holds for it`;
  return bad("unknown-class", text || t`nothing`, known, nearestName(names, tidy(text).slice(0, 20)));
}
