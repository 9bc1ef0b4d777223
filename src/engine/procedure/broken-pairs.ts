import { type BitRows, hasBit } from "./bits.ts";
import type { Graph } from "./graph.ts";
import { type NameOf, reasonsFor } from "./reasons.ts";
import { subPoset } from "./sub-poset.ts";

/** A pair that an answer has the wrong way round: `first` should have come before `then`. */
export interface Break {
  readonly first: string;
  readonly then: string;
  /** Why, in words; several reasons are joined by "; ". */
  readonly because: string;
  readonly critical: boolean;
}

/**
 * The broken pairs of an answer (steps by their place, each once, some may be left out), in step order of `first`, then
 * of `then`: those of the reduction of the closure among the steps given, so that a break across a step that was left
 * out is told too. For a complete answer these are the broken direct pairs. `critical` is that of `criticalPairs`.
 */
export function brokenPairs(
  graph: Graph,
  given: readonly number[],
  critical: BitRows,
  nameOf: NameOf,
): Break[] {
  const { steps } = graph.precedence;
  return reversedPairs(graph, given).map(([from, to]) => {
    const first = steps[from]!;
    const then = steps[to]!;
    const because = reasonsFor(graph, from, to, nameOf).join("; ");
    return { first, then, because, critical: hasBit(critical, from, to) };
  });
}

function reversedPairs(graph: Graph, given: readonly number[]): [number, number][] {
  const places = given.toSorted((a, b) => a - b);
  const whole = places.length === graph.poset.size;
  const { covers } = whole ? graph.poset : subPoset(graph.poset, places);
  const position = new Map(given.map((place, index) => [place, index]));
  return places.flatMap((first, index) =>
    covers[index]!.map((other): [number, number] => [first, places[other]!]).filter(
      ([, then]) => position.get(then)! < position.get(first)!,
    ),
  );
}
