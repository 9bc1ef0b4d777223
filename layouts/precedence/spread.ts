/** Sets things of given widths apart on a line, each as near as can be to where it wants to be. */

/**
 * The centres, in the given order, at least `gap` apart edge to edge, with the least sum of squared distances from
 * `wanted`: isotonic regression by pooling adjacent violators (Barlow and others 1972), after the widths are taken off. What
 * would stand further than `reach` from 0 at its outer edge is moved in, which is the least sum within these bounds too;
 * `reach` must leave room for all. O(n).
 */
export function spread(
  wanted: readonly number[],
  widths: readonly number[],
  gap: number,
  reach = Number.POSITIVE_INFINITY,
): number[] {
  if (wanted.length === 0) return [];
  const offsets = offsetsOf(widths, gap);
  const least = widths[0]! / 2 - reach;
  const most = reach - widths.at(-1)! / 2 - offsets.at(-1)!;
  const pools: Pool[] = [];
  for (let i = 0; i < wanted.length; i++) {
    let pool = { sum: wanted[i]! - offsets[i]!, count: 1 };
    for (
      let last = pools[pools.length - 1];
      last !== undefined && mean(last) > mean(pool);
      last = pools[pools.length - 1]
    ) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  }
  const places: number[] = [];
  for (const pool of pools)
    for (let n = 0; n < pool.count; n++)
      places.push(Math.max(least, Math.min(most, mean(pool))) + offsets[places.length]!);
  return places;
}

interface Pool {
  readonly sum: number;
  readonly count: number;
}

const mean = (pool: Pool) => pool.sum / pool.count;

/** How far the centre of each must be from that of the first at least. */
function offsetsOf(widths: readonly number[], gap: number): number[] {
  const offsets = [0];
  for (let i = 1; i < widths.length; i++)
    offsets.push(offsets[i - 1]! + widths[i - 1]! / 2 + gap + widths[i]! / 2);
  return offsets;
}
