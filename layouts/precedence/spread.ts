/** Sets things of given widths apart on a line, each as near as can be to where it wants to be. */

/**
 * The centres, in the given order, at least `gap` apart edge to edge, with the least sum of squared distances from
 * `wanted`: isotonic regression by pooling adjacent violators (Barlow and others 1972), after the widths are taken off. O(n).
 */
export function spread(wanted: readonly number[], widths: readonly number[], gap: number): number[] {
  const offsets: number[] = [];
  let offset = 0;
  for (const [i, width] of widths.entries()) {
    if (i > 0) offset += widths[i - 1]! / 2 + gap + width / 2;
    offsets.push(offset);
  }
  const pools: { sum: number; count: number }[] = [];
  for (const [i, want] of wanted.entries()) {
    let pool = { sum: want - offsets[i]!, count: 1 };
    for (let last = pools.at(-1); last !== undefined && mean(last) > mean(pool); last = pools.at(-1)) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools
    .flatMap((pool) => Array<number>(pool.count).fill(mean(pool)))
    .map((base, i) => base + offsets[i]!);
}

const mean = (pool: { readonly sum: number; readonly count: number }) => pool.sum / pool.count;
