import { t } from "../../words.ts";

/** What a formula of the workshop says of itself. */

/** The sums of the bench, as their forms and commands name them. */
export type SumName = "convert" | "thread" | "identify" | "torque" | "strip" | "vapour" | "air";

/**
 * Published: printed in the source. Memory: recalled, and good only as far as published tables agree with it. Practice: usual in the
 * trade and in no standard. Own: our own rule.
 */
export type FormulaStanding = "published" | "memory" | "practice" | "own";

export const standingWords: Readonly<Record<FormulaStanding, string>> = {
  published: t`published`,
  memory: t`from memory`,
  practice: t`common practice`,
  own: t`our own rule`,
};

export interface Formula {
  /** Unique; the anchor of its row on a page. */
  readonly id: string;
  readonly name: string;
  /** In words and signs, a relation after another. */
  readonly says: readonly string[];
  /** Unit of what it gives; "" where it gives no figure. */
  readonly unit: string;
  /** For what it holds. */
  readonly range: string;
  /** Standard, handbook or data set, with its clause. */
  readonly source: string;
  readonly standing: FormulaStanding;
  /** Sums that show it as a note of how they reckon. */
  readonly sums: readonly SumName[];
  /** Files of src/engine/workshop in which it stands. */
  readonly files: readonly string[];
}

export interface Chapter {
  readonly id: string;
  readonly title: string;
  /** What its signs mean, in a sentence; "" where words stand for all. */
  readonly signs: string;
  readonly formulas: readonly Formula[];
}
