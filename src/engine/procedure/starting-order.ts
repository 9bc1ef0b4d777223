import { shuffle } from "../quiz/shuffle.ts";
import { answerOrder } from "./answer-order.ts";
import type { Graph } from "./graph.ts";

/**
 * An order drawn by the seed that is not right already: a right one is turned round, which breaks every pair. `mixedIn` are
 * steps that do not belong to the graph; any order with one of them is wrong.
 */
export function startingOrder(graph: Graph, seed: string, mixedIn: readonly string[] = []): string[] {
  const drawn = shuffle([...graph.precedence.steps, ...mixedIn], seed);
  return answerOrder(graph, drawn).valid ? drawn.toReversed() : drawn;
}
