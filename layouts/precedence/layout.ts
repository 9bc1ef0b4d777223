/**
 * Lays a precedence graph out in rows, phases in bands: longest path for the rows, barycentres for the order in them
 * (Sugiyama, Tagawa and Toda 1981), least squares with a minimum distance for the places across. Fast enough to do for
 * every module of a build.
 */
import type { Band } from "./bands.ts";
import { type Knot, knot, thread } from "./knot.ts";
import { order } from "./order.ts";
import { place } from "./place.ts";
import { type Link, type Rows, rowsOf } from "./rows.ts";

export interface Spacing {
  readonly nodeWidth: number;
  readonly nodeHeight: number;
  readonly gapX: number;
  readonly gapY: number;
  /** Room for a line that passes through a row. */
  readonly lineWidth: number;
  /** Room above the first and below the last row of a band. */
  readonly bandTop: number;
  readonly bandBottom: number;
  /** How many boxes may stand side by side. */
  readonly most: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
  /** Half the height of what stands there: 0 where a line passes from band to band. */
  readonly half: number;
}

export interface Line<Of extends Link> {
  readonly link: Of;
  /** Centres of what the line passes, from the upper step to the lower one. */
  readonly points: readonly Point[];
}

export interface PlacedBand {
  readonly band: Band;
  readonly top: number;
  readonly height: number;
}

export interface Layout<Pair extends Link, Swap extends Link> {
  readonly width: number;
  readonly height: number;
  readonly bands: readonly PlacedBand[];
  /** Centres of all steps. */
  readonly nodes: ReadonlyMap<string, Point>;
  readonly pairs: readonly Line<Pair>[];
  readonly swaps: readonly Line<Swap>[];
}

/** How far apart lines end at a box where there is room: the mark of a critical line is 20 wide. */
const portGap = 24;

/**
 * `pairs` are reduced, `bands` those of `bandsOf`. Of two steps that may change places within a band, the one written first
 * stands higher. O(sweeps · (knots · log + lines² of each row)), a knot being a step or a line's way through a row.
 */
export function layOut<Pair extends Link, Swap extends Link>(
  bands: readonly Band[],
  pairs: readonly Pair[],
  swaps: readonly Swap[],
  spacing: Spacing,
): Layout<Pair, Swap> {
  const rows = rowsOf(bands, [...pairs, ...swaps], spacing.most);
  const knots = new Map([...rows.of].map(([step, row]) => [step, knot(row, spacing.nodeWidth)]));
  const grid: Knot[][] = Array.from({ length: rows.count }, () => []);
  for (const each of knots.values()) grid[each.layer]!.push(each);
  const threaded = <Of extends Link>(link: Of) => {
    const [a, b] = [knots.get(link.first)!, knots.get(link.then)!];
    const [upper, lower] = a.layer < b.layer ? [a, b] : [b, a];
    return { link, chain: thread(upper, lower, grid, spacing.lineWidth) };
  };
  const [pairLines, swapLines] = [pairs.map(threaded), swaps.map(threaded)];
  order(grid);
  place(grid, spacing.gapX);
  const { left, right } = sides(grid);
  const { middles, placed } = down(rows, bands, spacing);
  const at = ({ x, layer }: Knot): Point => ({ x: Math.round(x - left), ...middles[layer]! });
  const drawn = <Of extends Link>({ link, chain }: { link: Of; chain: readonly Knot[] }) => ({
    link,
    points: chain.map((each, i) => ({ ...at(each), x: Math.round(each.x - left) + portOf(each, chain, i) })),
  });
  return {
    width: Math.ceil(right - left),
    height: placed.reduce((sum, { height }) => sum + height, 0),
    bands: placed,
    nodes: new Map([...knots].map(([step, each]) => [step, at(each)])),
    pairs: pairLines.map(drawn),
    swaps: swapLines.map(drawn),
  };
}

/** Lines leave and reach a box side by side, in the order of where they come from and go to. */
function portOf(each: Knot, chain: readonly Knot[], index: number): number {
  const [near, other] = index === 0 ? [each.below, chain[1]!] : [each.above, chain[index - 1]!];
  if (index > 0 && index < chain.length - 1) return 0;
  const apart = Math.min(portGap, (each.width - portGap) / near.length);
  const place = near.filter(({ x }) => x < other.x).length;
  return Math.round((place - (near.length - 1) / 2) * apart);
}

function sides(grid: readonly (readonly Knot[])[]): { left: number; right: number } {
  let [left, right] = [Infinity, -Infinity];
  for (const { x, width } of grid.flat()) {
    left = Math.min(left, x - width / 2);
    right = Math.max(right, x + width / 2);
  }
  return left > right ? { left: 0, right: 0 } : { left, right };
}

/** The middle of each row, and the bands, one below the other. */
function down({ firsts, count }: Rows, bands: readonly Band[], spacing: Spacing) {
  const { nodeHeight, gapY, bandTop, bandBottom } = spacing;
  const middles: Omit<Point, "x">[] = [];
  const placed: PlacedBand[] = [];
  let top = 0;
  for (const [index, band] of bands.entries()) {
    const rows = (firsts[index + 1] ?? count + 1) - 1 - firsts[index]!;
    for (let row = 0; row < rows; row++)
      middles.push({ y: top + bandTop + row * (nodeHeight + gapY) + nodeHeight / 2, half: nodeHeight / 2 });
    const height = bandTop + rows * (nodeHeight + gapY) - gapY + bandBottom;
    placed.push({ band, top, height });
    top += height;
    middles.push({ y: top, half: 0 });
  }
  return { middles, placed };
}
