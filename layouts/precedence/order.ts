/** In which order things stand within their rows, so that few lines cross. */
import { type Knot, mean } from "./knot.ts";

const sweeps = 12;

/** Sweeps down and up, ordering each row by the barycentres of its neighbours; keeps the order with fewest crossings. */
export function order(rows: Knot[][]): void {
  for (const row of rows) number(row);
  let best = { crossings: crossings(rows), rows: rows.map((row) => [...row]) };
  let unchanged = 0;
  for (let sweep = 0; sweep < sweeps && best.crossings > 0 && unchanged < 2; sweep++) {
    const side = sweep % 2 === 0 ? "above" : "below";
    let hasChanged = false;
    for (const row of side === "above" ? rows : rows.toReversed()) if (sort(row, side)) hasChanged = true;
    unchanged = hasChanged ? 0 : unchanged + 1;
    if (!hasChanged) continue;
    const found = crossings(rows);
    if (found < best.crossings) best = { crossings: found, rows: rows.map((row) => [...row]) };
  }
  for (const [i, row] of best.rows.entries()) {
    rows[i] = row;
    number(row);
  }
}

/** Whether that has changed the row. */
function sort(row: Knot[], side: "above" | "below"): boolean {
  if (row.length < 2) return false;
  const centre = new Map(row.map((each) => [each, mean(each[side], "rank", each.rank)]));
  row.sort((a, b) => centre.get(a)! - centre.get(b)!);
  const hasChanged = row.some(({ rank }, index) => rank !== index);
  if (hasChanged) number(row);
  return hasChanged;
}

function number(row: readonly Knot[]): void {
  for (const [rank, each] of row.entries()) each.rank = rank;
}

/** Of the lines below each row, how many pairs cross. O(lines² of each row). */
function crossings(rows: readonly (readonly Knot[])[]): number {
  let count = 0;
  for (const row of rows) {
    const ends: number[] = [];
    for (const { below } of row) {
      const before = ends.length;
      for (const { rank } of below) {
        for (let i = 0; i < before; i++) if (ends[i]! > rank) count++;
        ends.push(rank);
      }
    }
  }
  return count;
}
