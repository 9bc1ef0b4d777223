/** How questions of a pool have worked, from sittings that each asked some of them. */
import { ofCorrelation, wilson } from "./intervals.ts";
import type { ItemKey, ItemStatistics, QuizStatistics } from "./item-statistics.ts";
import { type PairwiseAlpha, pairwiseAlpha } from "./pairwise-alpha.ts";
import type { PaperMoments } from "./paper-moments.ts";

/**
 * As `itemStatistics`, with the same figures where all sittings ask all questions. Otherwise: difficulty is over those who were asked
 * the question; its discrimination and its correlation with the total are those with the share of points earned on the rest of
 * the person's own paper, or on all of it, over those who were asked it; alpha is `pairwiseAlpha`. Expects at least one
 * sitting. O(questions²).
 */
export function paperStatistics(moments: PaperMoments, keys: readonly ItemKey[]): QuizStatistics {
  const alpha = pairwiseAlpha(moments);
  return {
    persons: moments.count,
    mean: moments.totalMean,
    variance: moments.totalVariance,
    alpha: alpha.alpha.value,
    papers: {
      length: moments.length,
      ...{ questions: alpha.items, pairs: alpha.pairs, apart: alpha.apart },
      alpha: alpha.ofPaper.value,
      noAlpha: alpha.alpha.value === null ? alpha.alpha.because : undefined,
    },
    items: keys.map((key, item) => statisticsOf(key, item, moments, alpha)),
  };
}

function statisticsOf(
  { id, max, isAllOrNothing }: ItemKey,
  item: number,
  moments: PaperMoments,
  alpha: PairwiseAlpha,
): ItemStatistics {
  const asked = moments.asked(item);
  const rest = moments.itemRest(item);
  const share = moments.mean(item) / max;
  return {
    id,
    asked,
    difficulty: asked === 0 ? null : share,
    difficultyInterval: isAllOrNothing && asked > 0 ? wilson(Math.round(share * asked), asked) : undefined,
    discrimination: rest.correlation,
    discriminationInterval:
      rest.correlation === null ? undefined : ofCorrelation(rest.correlation, rest.count),
    itemTotal: moments.itemTotal(item),
    alphaWithout: alpha.without[item]!,
  };
}
