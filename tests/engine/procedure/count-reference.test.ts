/** Numbers of linear extensions from closed formulas and OEIS: tests/reference/orders/linear_extension_counts.csv. */

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { chainsOf } from "../../../src/engine/procedure/chains.ts";
import { countByDownSets } from "../../../src/engine/procedure/count-down-sets.ts";
import { countOrders } from "../../../src/engine/procedure/count-orders.ts";
import { builtGraph, builtPoset, precedenceOf } from "./sample-orders.ts";

type Arrows = number[][];

const numberIn = (text: string): number => Number(/\d+/.exec(text)![0]);

/** Pairs of letters "a<c" and longer "A<B<C" as arrows. */
function relations(text: string): Arrows {
  const chains = text.split(/[,;]\s*/).map((chain) => chain.split("<"));
  const letters = [...new Set(chains.flat())];
  const arrows: Arrows = letters.map(() => []);
  for (const chain of chains) {
    for (const [at, letter] of chain.slice(1).entries()) {
      arrows[letters.indexOf(chain[at]!)]!.push(letters.indexOf(letter));
    }
  }
  return arrows;
}

/** Cells of rows of the given lengths; each before its neighbours to the right and below. */
function diagram(lengths: readonly number[]): Arrows {
  const cells = lengths.flatMap((length, row) => Array.from({ length }, (_, column) => `${row} ${column}`));
  return cells.map((cell) => {
    const [row, column] = cell.split(" ").map(Number) as [number, number];
    return [`${row} ${column + 1}`, `${row + 1} ${column}`]
      .map((next) => cells.indexOf(next))
      .filter((i) => i >= 0);
  });
}

function chains(lengths: readonly number[]): Arrows {
  const arrows: Arrows = [];
  for (const length of lengths) {
    const first = arrows.length;
    for (let at = 0; at < length; at++) arrows.push(at + 1 < length ? [first + at + 1] : []);
  }
  return arrows;
}

const families: Record<string, (parameter: string) => Arrows> = {
  "fence/zigzag": (parameter) => {
    const size = numberIn(parameter);
    return Array.from({ length: size }, (_, i) =>
      i % 2 ? [] : [i - 1, i + 1].filter((j) => j >= 0 && j < size),
    );
  },
  "2xn grid": (parameter) => diagram([numberIn(parameter), numberIn(parameter)]),
  "Young diagram": (parameter) => diagram(parameter.match(/\d+/g)!.map(Number)),
  "Boolean lattice": (parameter) => {
    const size = numberIn(parameter);
    return Array.from({ length: 2 ** size }, (_, set) =>
      Array.from({ length: size }, (_, bit) => set | (1 << bit)).filter((larger) => larger !== set),
    );
  },
  chain: (parameter) => chains([numberIn(parameter)]),
  antichain: (parameter) => chains(Array.from({ length: numberIn(parameter) }, () => 1)),
  "N poset": relations,
  "disjoint chains": (parameter) => chains(parameter.split("+").map(Number)),
  "crown/standard example": (parameter) => {
    const size = numberIn(parameter);
    const tops = Array.from({ length: size }, (_, j) => size + j);
    return [...tops.map((_, i) => tops.filter((top) => top !== size + i)), ...tops.map(() => [])];
  },
  "assembly: tree from cs.stackexchange 3314": relations,
};

/** The fields of a line of comma-separated values, in which quoted ones may hold commas. */
function fields(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((found) => found[1] ?? found[2]!);
}

const file = new URL("../../reference/orders/linear_extension_counts.csv", import.meta.url);
const [head, ...rows] = readFileSync(file, "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"));
let checked = 0;

test.each(rows.map((row) => [row]))("%s", (row) => {
  const [family, parameter, steps, coverEdges, known, counted, , ideals, width, height] = fields(row);
  const arrows = families[family!]!(parameter!);
  const poset = builtPoset(arrows);
  expect(poset.covers.flat()).toHaveLength(Number(coverEdges));
  expect(countOrders(builtGraph(precedenceOf(arrows)))).toMatchObject({
    steps: Number(steps),
    width: Number(width),
    height: Number(height),
    orders: BigInt(known!),
    reason: null,
  });
  expect(known).toBe(counted);
  expect(countByDownSets(poset, 2_000_000)).toEqual({ orders: BigInt(known!), downSets: Number(ideals) });
  expect(chainsOf(poset)).toHaveLength(Number(width));
  checked++;
});

test("no row was skipped", () => {
  expect(fields(head!)).toEqual(
    "family,param,n,cover_edges,known,counted,check,ideals,width,height,source".split(","),
  );
  expect(rows).toHaveLength(45);
  expect(checked).toBe(rows.length);
});
