/** Times the engine on orders: judging an answer, counting the right ones. */
import { answerOrder } from "../../src/engine/procedure/answer-order.ts";
import { countExtensions, countOrders, downSetLimit } from "../../src/engine/procedure/count-orders.ts";
import { type Graph, graphOf } from "../../src/engine/procedure/graph.ts";
import type { Pair } from "../../src/engine/procedure/precedence.ts";
import { type Random, randomFrom } from "./random.ts";
import { quantile, type Row } from "./row.ts";

export function orderRows(): Row[] {
  return [
    { what: "order answer, 50 steps, p95 of 200 random orders", measured: answerTime(50, 200), unit: "ms" },
    {
      what: "order answer, 500 steps, p95 of 50 random orders",
      measured: answerTime(500, 50),
      unit: "ms",
      budget: 16,
    },
    {
      what: "order answer, 2,000 steps, p95 of 20 random orders",
      measured: answerTime(2000, 20),
      unit: "ms",
    },
    countRow(chains([8, 8, 7, 7]), 50),
    countRow(chains([14, 14, 14, 14, 13]), 5000),
    memoryRow(),
    refusalRow(),
  ];
}

/** Of the whole process since it began, which is an upper bound of what the counting above took. */
function memoryRow(): Row {
  const measured = process.resourceUsage().maxRSS / 1024;
  return { what: "peak memory of the process once that is counted", measured, unit: "MiB", budget: 1024 };
}

/** 26 over 13 = 10,400,600 down-sets, of which as many as the limit are gone through before it says so. */
function refusalRow(): Row {
  const graph = grid(13);
  const measured = timed(() => {
    if (countOrders(graph).orders !== null) throw new Error("the grid was counted after all");
  });
  const what = `giving up at ${downSetLimit.toLocaleString("en")} down-sets`;
  return { what, measured, unit: "ms" };
}

/** Runs that are not counted: the first ones are spent on compiling the code. */
const warmUp = 30;

/** Random orders are the worst case: half of all pairs are the wrong way round. */
function answerTime(steps: number, times: number): number {
  const random = randomFrom(steps);
  const graph = scattered(steps, random);
  const orders = Array.from({ length: times + warmUp }, () => shuffled(graph.precedence.steps, random));
  const all = orders.map((order) => timed(() => answerOrder(graph, order)));
  return quantile(all.slice(warmUp), 0.95);
}

function countRow(graph: Graph, budget: number): Row {
  const downSets = countExtensions(graph.poset, downSetLimit)!.downSets;
  const measured = timed(() => countOrders(graph));
  const what = `right orders of ${graph.poset.size} steps with ${downSets.toLocaleString("en")} down-sets`;
  return { what, measured, unit: "ms", budget };
}

function timed(run: () => unknown): number {
  const began = performance.now();
  run();
  return performance.now() - began;
}

/** Each step comes after about two of the twenty written before it. */
function scattered(steps: number, random: Random): Graph {
  const before = Array.from({ length: steps }, (_, then) =>
    [0, 1]
      .map(() => then - random.whole(1, 20))
      .filter((first) => first >= 0)
      .map((first) => [first, then] as const),
  );
  return graphFrom(steps, before.flat());
}

/** Chains side by side, each tied to the next by its third step coming before the other's last but one: it can't be split. */
function chains(lengths: readonly number[]): Graph {
  const starts = lengths.map((_, i) => lengths.slice(0, i).reduce((sum, length) => sum + length, 0));
  const along = lengths.flatMap((length, i) =>
    Array.from({ length: length - 1 }, (_, at) => [starts[i]! + at, starts[i]! + at + 1] as const),
  );
  const across = starts.slice(1).map((start, i) => [starts[i]! + 2, start + lengths[i + 1]! - 2] as const);
  return graphFrom(starts.at(-1)! + lengths.at(-1)!, [...along, ...across]);
}

/** As many steps in each of two directions, each after its neighbours above and to the left. */
function grid(side: number): Graph {
  const before = Array.from({ length: side * side }, (_, at) => [
    ...(at % side > 0 ? [[at - 1, at] as const] : []),
    ...(at >= side ? [[at - side, at] as const] : []),
  ]);
  return graphFrom(side * side, before.flat());
}

function graphFrom(steps: number, before: readonly (readonly [number, number])[]): Graph {
  const names = Array.from({ length: steps }, (_, i) => `step-${i}`);
  const pairs = before.map(
    ([first, then]): Pair => ({
      first: names[first]!,
      then: names[then]!,
      because: ["it must"],
      critical: false,
    }),
  );
  const { graph } = graphOf({ steps: names, pairs });
  if (graph === null) throw new Error("the graph has a cycle");
  return graph;
}

function shuffled(steps: readonly string[], random: Random): string[] {
  const order = [...steps];
  for (let i = order.length - 1; i > 0; i--) {
    const j = random.whole(0, i);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
