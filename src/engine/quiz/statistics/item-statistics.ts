/** How questions of a quiz have worked: how hard each is, and whether those who do well at the rest do well at it. */
import { type Interval, ofCorrelation, wilson } from "./intervals.ts";
import type { Moments } from "./moments.ts";
import type { NoAlpha } from "./pairwise-alpha.ts";

export interface ItemStatistics {
  readonly id: string;
  /** Sittings that asked it. */
  readonly asked: number;
  /** The mean share of its points among those who were asked it: 1 is right for everybody; null where nobody was. */
  readonly difficulty: number | null;
  /** Of the difficulty, where every score was none or all of the points. */
  readonly difficultyInterval: Interval | undefined;
  /** Correlation with the total of all other items, or the share of points earned on the rest of the paper; null where either never varies. */
  readonly discrimination: number | null;
  readonly discriminationInterval: Interval | undefined;
  /** Correlation with the total, the item itself included. */
  readonly itemTotal: number | null;
  /** Alpha of the quiz without the item; null for fewer than three items. */
  readonly alphaWithout: number | null;
}

export interface QuizStatistics {
  readonly persons: number;
  readonly mean: number;
  /** Divided by n. */
  readonly variance: number;
  /** Cronbach's alpha, which is KR-20 where all scores are 0 or 1; null for one item or without variance. */
  readonly alpha: number | null;
  /** Where sittings asked some of the questions each (`paperStatistics`). */
  readonly papers?: PaperFacts | undefined;
  readonly items: readonly ItemStatistics[];
}

export interface PaperFacts {
  /** Questions that a sitting asked, on the average. */
  readonly length: number;
  /** Questions that two sittings or more asked, the pairs of those, and the pairs that fewer than two sittings asked together. */
  readonly questions: number;
  readonly pairs: number;
  readonly apart: number;
  /** Of a paper of that length, where `alpha` is of all the questions. */
  readonly alpha: number | null;
  /** Why there is no alpha. */
  readonly noAlpha: NoAlpha | undefined;
}

export interface ItemKey {
  readonly id: string;
  /** The most that it can score, greater than 0. */
  readonly max: number;
  /** Every score was 0 or `max`. */
  readonly isAllOrNothing: boolean;
}

/**
 * Difficulty, corrected item-total correlation, alpha and alpha if left out (L. J. Cronbach, Psychometrika 16 (1951);
 * G. F. Kuder and M. W. Richardson, Psychometrika 2 (1937), formula 20). Expects at least one sitting. O(items).
 */
export function itemStatistics(moments: Moments, keys: readonly ItemKey[]): QuizStatistics {
  const { count, totalVariance } = moments;
  const variances = keys.map((_, item) => moments.variance(item));
  const sum = variances.reduce((total, one) => total + one, 0);
  return {
    persons: count,
    mean: moments.totalMean,
    variance: totalVariance,
    alpha: alphaOf(keys.length, sum, totalVariance),
    items: keys.map(({ id, max, isAllOrNothing }, item) => {
      const variance = variances[item]!;
      const covariance = moments.covariance(item);
      const restVariance = Math.max(0, totalVariance + variance - 2 * covariance);
      const discrimination = correlation(covariance - variance, variance, restVariance);
      const hits = Math.round((moments.mean(item) / max) * count);
      return {
        id,
        asked: count,
        difficulty: moments.mean(item) / max,
        difficultyInterval: isAllOrNothing ? wilson(hits, count) : undefined,
        discrimination,
        discriminationInterval: discrimination === null ? undefined : ofCorrelation(discrimination, count),
        itemTotal: correlation(covariance, variance, totalVariance),
        alphaWithout: alphaOf(keys.length - 1, sum - variance, restVariance),
      };
    }),
  };
}

/** A variance below this share of what it was taken from is what rounding has left of none. */
const rounding = 1e-12;

function alphaOf(items: number, variances: number, totalVariance: number): number | null {
  if (items < 2 || totalVariance <= rounding) return null;
  return (items / (items - 1)) * (1 - variances / totalVariance);
}

function correlation(covariance: number, a: number, b: number): number | null {
  return a <= rounding || b <= rounding ? null : covariance / Math.sqrt(a * b);
}
