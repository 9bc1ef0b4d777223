/** How questions of a quiz have worked: how hard each is, and whether those who do well at the rest do well at it. */
import { type Interval, ofCorrelation, wilson } from "./intervals.ts";
import type { Moments } from "./moments.ts";

export interface ItemStatistics {
  readonly id: string;
  /** The mean share of its points: 1 is right for everybody. */
  readonly difficulty: number;
  /** Of the difficulty, where every score was none or all of the points. */
  readonly difficultyInterval: Interval | undefined;
  /** Correlation with the total of all other items; null where either never varies. */
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
  readonly items: readonly ItemStatistics[];
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
