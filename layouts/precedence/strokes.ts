/** The lines of the drawing, cut where they pass from band to band. */
import type { Pair } from "../../src/engine/procedure/precedence.ts";
import type { Swap } from "../../src/engine/procedure/swaps.ts";
import type { Layout, Line, Point } from "./layout.ts";

/** A line, or its part in one band. */
export interface Stroke {
  /** Names of its style: "critical", "swap"; "tip" where a line of a pair ends at its step. */
  readonly kind: string | undefined;
  readonly points: readonly Point[];
}

/** The strokes of each band: those of pairs above those that are only allowed to swap. */
export function linesOf({ bands, pairs, swaps }: Layout<Pair, Swap>): Stroke[][] {
  const strokes: Stroke[][] = bands.map(() => []);
  const draw = ({ points }: Line<Pair | Swap>, kinds: readonly (string | false)[], tip?: string) => {
    const first = bands.findIndex(({ top, height }) => points[0]!.y < top + height);
    const parts = cut(points);
    for (const [index, part] of parts.entries()) {
      const kind = [...kinds, index === parts.length - 1 && tip].filter(Boolean).join(" ");
      strokes[first + index]!.push({ kind: kind === "" ? undefined : kind, points: part });
    }
  };
  for (const line of swaps) draw(line, ["swap"]);
  for (const line of pairs) draw(line, [line.link.critical && "critical"], "tip");
  return strokes;
}

function cut(points: readonly Point[]): Point[][] {
  const parts: Point[][] = [[]];
  for (const point of points) {
    parts.at(-1)!.push(point);
    if (point.half === 0) parts.push([point]);
  }
  return parts;
}

/** Relative places, which are alike from line to line, compress better. */
export function pathThrough(points: readonly Point[]): string {
  const start = points[0]!;
  let path = `M${start.x} ${start.y + start.half}`;
  for (const [index, to] of points.slice(1).entries()) {
    const from = points[index]!;
    const [across, down] = [to.x - from.x, to.y - to.half - (from.y + from.half)];
    path += across === 0 ? `v${down}` : `c0 ${down / 2} ${across} ${down / 2} ${across} ${down}`;
    if (to.half > 0 && index < points.length - 2) path += `v${2 * to.half}`;
  }
  return path;
}
