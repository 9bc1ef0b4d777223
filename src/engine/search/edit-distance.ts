/** How many slips of the finger lie between two words. */

/**
 * Optimal string alignment: letters wrong, missing, extra, or exchanged with the next count one each, and no stretch is
 * mended twice (F. J. Damerau, CACM 7, 1964; L. Boytsov, "Indexing methods for approximate dictionary searching", 2011, section 2). O(a · b).
 */
export function editDistance(a: string, b: string): number {
  let twoBack: number[] = [];
  let back = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const wrong = back[j - 1]! + Number(a[i - 1] !== b[j - 1]);
      const exchanged = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          wrong,
          back[j]! + 1,
          row[j - 1]! + 1,
          exchanged ? twoBack[j - 2]! + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    [twoBack, back] = [back, row];
  }
  return back[b.length]!;
}
