import { shuffle } from "../quiz/shuffle.ts";
import { answerOrder } from "./answer-order.ts";
import type { Graph } from "./graph.ts";

/** An order drawn by the seed that is not right already: a right one is turned round, which breaks every pair. */
export function startingOrder(graph: Graph, seed: string): string[] {
  const drawn = shuffle(graph.precedence.steps, seed);
  return answerOrder(graph, drawn).valid ? drawn.toReversed() : drawn;
}
