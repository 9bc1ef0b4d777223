/** Random and named partial orders, and slow, plain ways to find what the engine finds quickly. */

import * as fc from "fast-check";
import { type Graph, graphOf } from "../../../src/engine/procedure/graph.ts";
import { type Poset, posetOf } from "../../../src/engine/procedure/poset.ts";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";

/** Arrows over 0..n-1 without a cycle, the numbers in no particular order. */
export function acyclicArrows(least: number, most: number): fc.Arbitrary<number[][]> {
  return fc.integer({ min: least, max: most }).chain((size) =>
    fc
      .tuple(
        fc.array(fc.nat({ max: 99 }), { minLength: size * size, maxLength: size * size }),
        fc.integer({ min: 5, max: 70 }),
        shuffled(size),
      )
      .map(([dice, percent, label]) => {
        const arrows: number[][] = Array.from({ length: size }, () => []);
        for (let low = 0; low < size; low++) {
          for (let high = low + 1; high < size; high++) {
            if (dice[low * size + high]! < percent) arrows[label[low]!]!.push(label[high]!);
          }
        }
        return arrows;
      }),
  );
}

/** 0..n-1 in any order. */
export function shuffled(size: number): fc.Arbitrary<number[]> {
  const all = Array.from({ length: size }, (_, index) => index);
  return fc.shuffledSubarray(all, { minLength: size, maxLength: size });
}

export const stepName = (index: number): string => `step-${index}`;

/** Arrows as a precedence graph; a pair is critical where `isCritical` says so. */
export function precedenceOf(
  arrows: readonly (readonly number[])[],
  isCritical: (first: number, then: number) => boolean = () => false,
  name: (index: number) => string = stepName,
): Precedence {
  const pair = (tail: number, head: number): Pair => {
    const then = name(head);
    return { first: name(tail), then, because: [`${tail} before ${head}`], critical: isCritical(tail, head) };
  };
  const pairs = arrows.flatMap((heads, tail) => heads.map((head) => pair(tail, head)));
  return { steps: arrows.map((_, index) => name(index)), pairs };
}

export function builtGraph(precedence: Precedence): Graph {
  const { graph, cycle } = graphOf(precedence);
  if (graph === null) throw new Error(`a cycle: ${cycle.join(", ")}`);
  return graph;
}

export function builtPoset(arrows: readonly (readonly number[])[]): Poset {
  const poset = posetOf(arrows);
  if (poset === null) throw new Error("a cycle");
  return poset;
}

/** Whether a way leads from one to the other, for each pair (S. Warshall, J. ACM 9 (1962)). */
export function reachability(arrows: readonly (readonly number[])[]): boolean[][] {
  const reach = arrows.map((heads) => arrows.map((_, head) => heads.includes(head)));
  for (const [middle] of reach.entries()) {
    for (const row of reach) {
      if (row[middle]) for (const [head, there] of reach[middle]!.entries()) row[head] ||= there;
    }
  }
  return reach;
}

/** Every order of the items. */
export function permutations<T>(items: readonly T[]): T[][] {
  let built: T[][] = [[]];
  for (const item of items) {
    built = built.flatMap((order) =>
      Array.from({ length: order.length + 1 }, (_, at) => order.toSpliced(at, 0, item)),
    );
  }
  return built;
}

/** Whether no pair of `reach` stands the wrong way round in `order`. */
export function isRight(reach: readonly (readonly boolean[])[], order: readonly number[]): boolean {
  return order.every((step, at) => order.slice(0, at).every((earlier) => !reach[step]![earlier]));
}

/** Every subset of 0..n-1. */
export function subsets(size: number): number[][] {
  return Array.from({ length: 2 ** size }, (_, bits) =>
    Array.from({ length: size }, (_, index) => index).filter((index) => (bits >>> index) & 1),
  );
}
