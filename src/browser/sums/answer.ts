/** What a sum of the page gives: the answer and what it rests on, or what is wrong with the fields. */
import type { Fields } from "../../engine/workshop/asked/fields.ts";
import type { Grounds } from "../../engine/workshop/grounds.ts";
import type { UnitSystem } from "./amounts.ts";

/** One figure of an answer, with its other unit where it has one. */
export interface Figure {
  readonly name: string;
  readonly value: string;
  readonly also?: string | undefined;
}

/** Threads that a measured screw is held against. */
export interface Comparison {
  readonly caption: string;
  readonly columns: readonly string[];
  /** As many cells as there are columns; the first names the thread. */
  readonly rows: readonly (readonly string[])[];
}

export interface Answer {
  /** The answer in a sentence. */
  readonly headline: string;
  readonly figures: readonly Figure[];
  readonly comparison?: Comparison;
  readonly grounds: Pick<Grounds, "assumptions" | "warnings" | "sources">;
}

export interface Sum {
  /** As its section of the page is named. */
  readonly id: string;
  /** Undefined where `fields` has noted what is wrong. `units` says which unit stands first. */
  reckon(fields: Fields, units: UnitSystem): Answer | undefined;
}
