/**
 * Lays a precedence graph out in layers: longest path for the layers, barycentres for the order in them (Sugiyama, Tagawa
 * and Toda 1981), least squares with a minimum distance for the places across. Fast enough to do for every module of a build.
 */
import type { Pair, Precedence } from "../../src/engine/procedure/precedence.ts";
import { type Knot, knot, mean, thread } from "./knot.ts";
import { layers } from "./layers.ts";
import { order } from "./order.ts";
import { spread } from "./spread.ts";

export interface Spacing {
  readonly nodeWidth: number;
  readonly nodeHeight: number;
  readonly gapX: number;
  readonly gapY: number;
  /** Room for a line that passes through a layer. */
  readonly lineWidth: number;
}

export interface PlacedEdge {
  readonly pair: Pair;
  /** Centres of what the line passes: its first step, the layers between, its second step. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Centres, by step. Steps in no pair are left out. */
  readonly nodes: ReadonlyMap<string, { readonly x: number; readonly y: number }>;
  readonly edges: readonly PlacedEdge[];
}

const sweeps = 12;

/** `graph` is reduced and its steps stand in a right order. O(sweeps · (steps · layers + pairs · layers · log)). */
export function layOut(graph: Precedence, spacing: Spacing): Layout {
  const layerOf = layers(graph);
  const knots = new Map([...layerOf].map(([id, layer]) => [id, knot(layer, spacing.nodeWidth)]));
  const rows: Knot[][] = Array.from({ length: 1 + Math.max(-1, ...layerOf.values()) }, () => []);
  for (const each of knots.values()) rows[each.layer]!.push(each);
  const lines = graph.pairs.map((pair) => ({
    pair,
    chain: thread(knots.get(pair.first)!, knots.get(pair.then)!, rows, spacing.lineWidth),
  }));
  order(rows);
  place(rows, spacing.gapX);
  const left = Math.min(...rows.flatMap((row) => row.map((each) => each.x - each.width / 2)));
  const at = (each: Knot) => ({
    x: Math.round(each.x - left),
    y: each.layer * (spacing.nodeHeight + spacing.gapY) + spacing.nodeHeight / 2,
  });
  return {
    width: Math.ceil(
      Math.max(0, ...rows.flatMap((row) => row.map((each) => each.x + each.width / 2 - left))),
    ),
    height: Math.max(0, rows.length * (spacing.nodeHeight + spacing.gapY) - spacing.gapY),
    nodes: new Map([...knots].map(([id, each]) => [id, at(each)])),
    edges: lines.map(({ pair, chain }) => ({ pair, points: chain.map(at) })),
  };
}

/** Moves each layer under and over its neighbours, in turn. */
function place(rows: readonly Knot[][], gap: number): void {
  for (const row of rows)
    setApart(
      row,
      row.map(() => 0),
      gap,
    );
  for (let sweep = 0; sweep <= sweeps; sweep++) {
    const side = sweep % 2 === 0 ? "above" : "below";
    for (const row of side === "above" ? rows : [...rows].reverse()) {
      setApart(
        row,
        row.map((each) => mean(each[side].map((near) => near.x)) ?? each.x),
        gap,
      );
    }
  }
}

function setApart(row: readonly Knot[], wanted: readonly number[], gap: number): void {
  const places = spread(
    wanted,
    row.map((each) => each.width),
    gap,
  );
  for (const [i, each] of row.entries()) each.x = places[i]!;
}
