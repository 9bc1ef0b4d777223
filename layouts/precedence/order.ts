/** In which order things stand within their layers, so that few lines cross. */
import { type Knot, mean } from "./knot.ts";

const sweeps = 12;

/** Sweeps down and up, ordering each layer by the barycentres of its neighbours; keeps the order with fewest crossings. */
export function order(rows: Knot[][]): void {
  for (const row of rows) number(row);
  let best = { crossings: crossings(rows), ranks: rows.map((row) => row.map((each) => each.rank)) };
  const all = rows.map((row) => [...row]);
  for (let sweep = 0; sweep < sweeps && best.crossings > 0; sweep++) {
    const side = sweep % 2 === 0 ? "above" : "below";
    for (const row of side === "above" ? rows : [...rows].reverse()) {
      const centre = new Map(
        row.map((each) => [each, mean(each[side].map((near) => near.rank)) ?? each.rank]),
      );
      row.sort((a, b) => centre.get(a)! - centre.get(b)!);
      number(row);
    }
    const found = crossings(rows);
    if (found < best.crossings)
      best = { crossings: found, ranks: all.map((row) => row.map((each) => each.rank)) };
  }
  for (const [i, row] of all.entries()) for (const [j, each] of row.entries()) each.rank = best.ranks[i]![j]!;
  for (const row of rows) row.sort((a, b) => a.rank - b.rank);
}

function number(row: readonly Knot[]): void {
  for (const [rank, each] of row.entries()) each.rank = rank;
}

function crossings(rows: readonly Knot[][]): number {
  let count = 0;
  for (const row of rows) {
    const lines = row.flatMap((from) => from.below.map((to) => [from.rank, to.rank] as const));
    for (const [i, a] of lines.entries()) {
      for (const b of lines.slice(i + 1)) if ((a[0] - b[0]) * (a[1] - b[1]) < 0) count++;
    }
  }
  return count;
}
