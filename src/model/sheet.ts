import type { OwnFigures } from "../engine/workshop/air/substance.ts";
import type { Section } from "./source.ts";

/** What tools, substances and hazards have in common: one item on its own page. */
interface SheetBase {
  readonly id: string;
  readonly path: string;
  readonly title: string;
  readonly summary: string;
  readonly sections: readonly Section[];
}

export interface Tool extends SheetBase {
  readonly kind: "tool";
  /** The drives that it fits, where it is a driver: a set of bits fits several. */
  readonly drives: readonly string[];
  readonly uses: readonly string[];
  readonly care: string | undefined;
}

export const substanceUses = ["cleaning", "drying", "lubricating", "penetrating"] as const;
export type SubstanceUse = (typeof substanceUses)[number];

/** Pictogram codes of the Globally Harmonized System (GHS), UN. */
export const ghsPictograms = [
  "GHS01",
  "GHS02",
  "GHS03",
  "GHS04",
  "GHS05",
  "GHS06",
  "GHS07",
  "GHS08",
  "GHS09",
] as const;
export type GhsPictogram = (typeof ghsPictograms)[number];

export interface Substance extends SheetBase {
  readonly kind: "substance";
  readonly uses: readonly SubstanceUse[];
  readonly flammable: boolean;
  /** The signal word of its label under GHS; not to be mixed up with that of a task's safety message. */
  readonly signal: "danger" | "warning" | "none";
  readonly pictograms: readonly GhsPictogram[];
  /** H-statement codes. */
  readonly statements: readonly string[];
  /** P-statement codes, combined ones with a plus. */
  readonly precautions: readonly string[];
  /** Figures of its safety data sheet, which go before those of the table of solvents. */
  readonly air: OwnFigures | undefined;
  readonly dataSheet: string;
  readonly hazards: readonly string[];
  /** What to try first, because it harms less. */
  readonly instead: string | undefined;
}

/** Signal words in falling order of severity, as ANSI Z535.6 and ISO 3864-2 use them. */
export const signalWords = ["danger", "warning", "caution", "notice"] as const;
export type SignalWord = (typeof signalWords)[number];

export interface Hazard extends SheetBase {
  readonly kind: "hazard";
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoid: readonly string[];
}

export type Sheet = Tool | Substance | Hazard;
