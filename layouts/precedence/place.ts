/** Where things stand across, once their order within each row is known. */
import { type Knot, mean } from "./knot.ts";
import { spread } from "./spread.ts";

const sweeps = 12;
/** How much wider than its fullest row a drawing may be, so that lines run straight. */
const slack = 1.1;

/** Moves each row under and over its neighbours, in turn. */
export function place(rows: readonly (readonly Knot[])[], gap: number): void {
  const reach = (slack * Math.max(0, ...rows.map((row) => needed(row, gap)))) / 2;
  for (const row of rows)
    setApart(
      row,
      row.map(() => 0),
      gap,
      reach,
    );
  for (let sweep = 0; sweep <= sweeps; sweep++) {
    const side = sweep % 2 === 0 ? "above" : "below";
    for (const row of side === "above" ? rows : rows.toReversed()) {
      const wanted = row.map((each) => mean(each[side], "x", each.x));
      setApart(row, wanted, gap, reach);
    }
  }
}

const needed = (row: readonly Knot[], gap: number): number =>
  row.reduce((sum, { width }) => sum + width + gap, -gap);

function setApart(row: readonly Knot[], wanted: readonly number[], gap: number, reach: number): void {
  const widths = row.map((each) => each.width);
  for (const [i, x] of spread(wanted, widths, gap, reach).entries()) row[i]!.x = x;
}
