/** An order answer as a trainee is told it. */
import { answerOrder, type OrderAnswer } from "./answer-order.ts";
import { type Graph, placeOf } from "./graph.ts";
import { mergedReasons } from "./merged-reasons.ts";
import { type NameOf, reasonsFor } from "./reasons.ts";

/** A pair that an answer has the wrong way round, each reason by itself. */
export interface ToldBreak {
  readonly first: string;
  readonly then: string;
  readonly reasons: readonly string[];
  readonly critical: boolean;
}

export interface ExplainedOrder extends OrderAnswer {
  /** In step order of `first`, then of `then`. */
  readonly told: readonly ToldBreak[];
}

/**
 * `answerOrder`, and what is told of it: its breaks, and each given pair of the graph that is reversed too and does not
 * follow from them. With a before b before c given as b, c, a the break is that of a and b; that a stands behind c as well
 * is told where the graph has that pair. Throws as `answerOrder` does.
 */
export function explainOrder(
  graph: Graph,
  given: readonly string[],
  nameOf: NameOf = (step) => step,
): ExplainedOrder {
  const answer = answerOrder(graph, given, nameOf);
  const broken = answer.breaks.map(({ first, then, critical }) => {
    return { first, then, reasons: mergedReasons(reasonsOf(graph, first, then, nameOf)), critical };
  });
  const inStepOrder = (a: ToldBreak, b: ToldBreak) =>
    placeOf(graph.places, a.first) - placeOf(graph.places, b.first) ||
    placeOf(graph.places, a.then) - placeOf(graph.places, b.then);
  return { ...answer, told: [...broken, ...furtherBreaks(graph, given, broken)].sort(inStepOrder) };
}

/** A pair's own reasons say more than those on the way from one step to the other. */
function reasonsOf(graph: Graph, first: string, then: string, nameOf: NameOf): readonly string[] {
  const from = placeOf(graph.places, first);
  const own = graph.pairsFrom[from]!.filter((pair) => pair.then === then).flatMap(({ because }) => because);
  return own.length > 0 ? own : reasonsFor(graph, from, placeOf(graph.places, then), nameOf);
}

function furtherBreaks(graph: Graph, given: readonly string[], broken: readonly ToldBreak[]): ToldBreak[] {
  const position = new Map(given.map((step, index) => [step, index]));
  const from = new Map<string, string[]>();
  for (const { first, then } of broken) from.set(first, [...(from.get(first) ?? []), then]);
  return graph.precedence.pairs
    .filter(({ first, then }) => (position.get(then) ?? Infinity) < (position.get(first) ?? -1))
    .filter(({ first, then }) => !follows(from, first, then))
    .map(({ first, then, because, critical }) => ({
      first,
      then,
      reasons: mergedReasons(because),
      critical,
    }));
}

/** Whether a chain of broken pairs leads from one step to the other. */
function follows(from: ReadonlyMap<string, readonly string[]>, first: string, then: string): boolean {
  const met = new Set([first]);
  for (const step of met) for (const next of from.get(step) ?? []) met.add(next);
  return met.has(then);
}
