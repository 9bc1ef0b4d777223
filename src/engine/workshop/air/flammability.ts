import { t } from "../../words.ts";

/** Classes of flammable liquids by flash point. */

/** A class of one scheme: from `from` (counted in where `fromIncluded`) to `to` (counted in where `toIncluded`), °C. */
interface Row {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly toIncluded: boolean;
  /** Only where the liquid boils at or below (above) this, °C. */
  readonly boilsUpTo?: number;
  readonly boilsAbove?: number;
  readonly boilsFrom?: number;
  readonly boilsBelow?: number;
}

export interface GhsCategory {
  readonly category: 1 | 2 | 3 | 4;
  readonly statement: string;
  readonly signal: "Danger" | "Warning";
}

/** GHS, as in 29 CFR 1910.106(a)(19). Category 4 is not adopted in the European Union. */
const ghs: readonly (Row & { readonly is: GhsCategory })[] = [
  {
    name: "1",
    from: -Infinity,
    to: 23,
    toIncluded: false,
    boilsUpTo: 35,
    is: { category: 1, statement: "H224", signal: "Danger" },
  },
  {
    name: "2",
    from: -Infinity,
    to: 23,
    toIncluded: false,
    boilsAbove: 35,
    is: { category: 2, statement: "H225", signal: "Danger" },
  },
  {
    name: "3",
    from: 23,
    to: 60,
    toIncluded: true,
    is: { category: 3, statement: "H226", signal: "Warning" },
  },
  {
    name: "4",
    from: 60,
    to: 93,
    toIncluded: true,
    is: { category: 4, statement: "H227", signal: "Warning" },
  },
];

/** NFPA 30; IIIB has no upper end. IIIA and IIIB from memory. */
const nfpa: readonly Row[] = [
  { name: "IA", from: -Infinity, to: 22.8, toIncluded: false, boilsBelow: 37.8 },
  { name: "IB", from: -Infinity, to: 22.8, toIncluded: false, boilsFrom: 37.8 },
  { name: "IC", from: 22.8, to: 37.8, toIncluded: false },
  { name: "II", from: 37.8, to: 60, toIncluded: false },
  { name: "IIIA", from: 60, to: 93, toIncluded: false },
  { name: "IIIB", from: 93, to: Infinity, toIncluded: false },
];

export const flammabilitySource = t`GHS categories as in 29 CFR 1910.106(a)(19)`;

/** The GHS category of a liquid by flash point and boiling point in °C; undefined above 93 °C, where there is none. */
export function ghsCategory(flashC: number, boilingC: number): GhsCategory | undefined {
  return ghs.find((row) => holds(row, flashC, boilingC))?.is;
}

/** The NFPA 30 class of a liquid by flash point and boiling point in °C. */
export function nfpaClass(flashC: number, boilingC: number): string | undefined {
  return nfpa.find((row) => holds(row, flashC, boilingC))?.name;
}

/** Rows stand in order, so that only the upper end needs looking at for what the row before has taken. */
function holds(row: Row, flash: number, boiling: number): boolean {
  const within = flash >= row.from && (row.toIncluded ? flash <= row.to : flash < row.to);
  return (
    within &&
    boiling <= (row.boilsUpTo ?? Infinity) &&
    boiling > (row.boilsAbove ?? -Infinity) &&
    boiling >= (row.boilsFrom ?? -Infinity) &&
    boiling < (row.boilsBelow ?? Infinity)
  );
}
