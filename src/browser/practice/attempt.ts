/** One go at a practice, as it is kept in the browser. */
import type { Graph } from "../../engine/procedure/graph.ts";
import { startingOrder } from "../../engine/procedure/starting-order.ts";
import { readOrder, readSelection } from "../arranging/order.ts";
import { fieldsOf } from "../page/store.ts";

export interface Attempt {
  /** Steps that were left out are not in it. */
  readonly order: readonly string[];
  /** The moves that mend it were shown. */
  readonly shown: boolean;
  /** It was checked and right, without having been shown. */
  readonly right: boolean;
}

/** `mixedIn` are steps that do not belong to the graph; nothing is left out at the start. */
export function newAttempt(graph: Graph, seed: string, mixedIn: readonly string[] = []): Attempt {
  return { order: startingOrder(graph, seed, mixedIn), shown: false, right: false };
}

/** Reads a kept attempt; undefined where it does not fit the steps. */
export function readAttempt(
  kept: unknown,
  graph: Graph,
  mixedIn: readonly string[] = [],
): Attempt | undefined {
  const { order, shown, right } = fieldsOf(kept);
  const { steps } = graph.precedence;
  const read = mixedIn.length === 0 ? readOrder(order, steps) : readSelection(order, [...steps, ...mixedIn]);
  return read === undefined ? undefined : { order: read, shown: shown === true, right: right === true };
}
