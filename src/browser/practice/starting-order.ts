import { answerOrder } from "../../engine/procedure/answer-order.ts";
import type { Graph } from "../../engine/procedure/graph.ts";
import { shuffle } from "../../engine/quiz/shuffle.ts";

/** An order drawn by the seed that is not right already: a right one is turned round, which breaks every pair. */
export function startingOrder(graph: Graph, seed: string): string[] {
  const drawn = shuffle(graph.precedence.steps, seed);
  return answerOrder(graph, drawn).valid ? drawn.toReversed() : drawn;
}
