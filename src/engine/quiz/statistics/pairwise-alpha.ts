/** Alpha where nobody was asked all questions: from the covariances of each two, over those who were asked both. */
import type { PaperMoments } from "./paper-moments.ts";

/** Why there is no alpha. */
export type NoAlpha =
  /** Fewer than two questions were asked of two sittings or more. */
  | "too-few-questions"
  /** No two questions were asked together of two sittings or more. */
  | "never-together"
  /** The scores do not vary. */
  | "no-variance"
  /** It comes to more than 1: covariances of different people need not fit together. */
  | "does-not-fit";

export type Alpha = { readonly value: number } | { readonly value: null; readonly because: NoAlpha };

export interface PairwiseAlpha {
  /** Of all questions that were asked of two sittings or more. */
  readonly alpha: Alpha;
  /** Of a paper as long as those that were sat. */
  readonly ofPaper: Alpha;
  /** By question, of all others; null where there is none, and for a question that has no variance to be left out. */
  readonly without: readonly (number | null)[];
  /** Questions that were asked of two sittings or more. */
  readonly items: number;
  /** Pairs of those; and those of them that fewer than two sittings asked together. */
  readonly pairs: number;
  readonly apart: number;
}

/** What alpha follows from: sums over questions of variances, and over their pairs of covariances. */
interface Sums {
  readonly items: number;
  readonly variances: number;
  /** Pairs that have a covariance. */
  readonly pairs: number;
  readonly covariances: number;
}

/**
 * Alpha = k c̄ / (v̄ + (k − 1) c̄), with the mean variance v̄ and the mean covariance c̄ of k questions (L. J. Cronbach,
 * Psychometrika 16 (1951)). Each variance is over those who were asked the question, each covariance over those who were
 * asked both, all divided by n − 1: pairwise deletion, or available cases (R. J. A. Little and D. B. Rubin, Statistical
 * Analysis with Missing Data, 3rd ed. 2019, chapter 3; C. K. Enders, Applied Missing Data Analysis, 2010, chapter 2), which is right
 * on the average where what is missing is missing by lot, as on papers drawn by seed. Where every two questions were asked
 * together this is the alpha of the pairwise covariance matrix; where some were not, the mean covariance of the others stands
 * for theirs. With nothing missing it is the ordinary alpha.
 *
 * Of a paper of `length` questions it is the same with `length` for k, which is what C. Spearman and W. Brown (Br. J.
 * Psychol. 3 (1910)) make of it. It does not count that one paper may be harder than another. O(questions²).
 */
export function pairwiseAlpha(moments: PaperMoments): PairwiseAlpha {
  const items = moments.max.length;
  const variances = Array.from({ length: items }, (_, item) => moments.variance(item));
  const rows = variances.map((_, item) => rowOf(moments, item));
  const known = variances.filter((variance) => variance !== undefined);
  const all = {
    items: known.length,
    variances: sum(known),
    pairs: sum(rows.map(({ pairs }) => pairs)) / 2,
    covariances: sum(rows.map(({ covariances }) => covariances)) / 2,
  };
  const pairs = (all.items * (all.items - 1)) / 2;
  return {
    alpha: alphaOf(all, all.items),
    ofPaper: alphaOf(all, moments.length),
    without: variances.map((variance, item) => {
      if (variance === undefined) return null;
      const rest = less(all, variance, rows[item]!);
      return alphaOf(rest, rest.items).value;
    }),
    items: all.items,
    pairs,
    apart: pairs - all.pairs,
  };
}

type Row = Pick<Sums, "pairs" | "covariances">;

/** Of one question with each other. */
function rowOf(moments: PaperMoments, item: number): Row {
  let [pairs, covariances] = [0, 0];
  for (let other = 0; other < moments.max.length; other++) {
    const covariance = other === item ? undefined : moments.covariance(item, other);
    if (covariance === undefined) continue;
    pairs++;
    covariances += covariance;
  }
  return { pairs, covariances };
}

const less = (all: Sums, variance: number, row: Row): Sums => ({
  items: all.items - 1,
  variances: all.variances - variance,
  pairs: all.pairs - row.pairs,
  covariances: all.covariances - row.covariances,
});

const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);

/** A variance below this is what rounding has left of none. */
const rounding = 1e-12;

function alphaOf({ items, variances, pairs, covariances }: Sums, length: number): Alpha {
  if (items < 2) return { value: null, because: "too-few-questions" };
  if (pairs === 0) return { value: null, because: "never-together" };
  const [variance, covariance] = [variances / items, covariances / pairs];
  const total = variance + (length - 1) * covariance;
  if (variance <= rounding) return { value: null, because: "no-variance" };
  const value = (length * covariance) / total;
  if (total <= rounding || value > 1 + rounding) return { value: null, because: "does-not-fit" };
  return { value };
}
