/** One go at a practice, as it is kept in the browser. */
import type { Graph } from "../../engine/procedure/graph.ts";
import { startingOrder } from "../../engine/procedure/starting-order.ts";
import { readOrder } from "../arranging/order.ts";
import { fieldsOf } from "../page/store.ts";

export interface Attempt {
  readonly order: readonly string[];
  /** The moves that mend it were shown. */
  readonly shown: boolean;
  /** It was checked and right, without having been shown. */
  readonly right: boolean;
}

export function newAttempt(graph: Graph, seed: string): Attempt {
  return { order: startingOrder(graph, seed), shown: false, right: false };
}

/** Reads a kept attempt; undefined where it does not fit the steps. */
export function readAttempt(kept: unknown, graph: Graph): Attempt | undefined {
  const { order, shown, right } = fieldsOf(kept);
  const read = readOrder(order, graph.precedence.steps);
  return read === undefined ? undefined : { order: read, shown: shown === true, right: right === true };
}
