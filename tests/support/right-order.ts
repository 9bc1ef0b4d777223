import type { Precedence } from "../../src/engine/procedure/precedence.ts";
import { shuffle } from "../../src/engine/quiz/shuffle.ts";

/** One right order, drawn by a seed: again and again one of the steps that are free. */
export function sampleRightOrder({ steps, pairs }: Precedence, seed: string): string[] {
  const waiting = new Map(steps.map((step) => [step, pairs.filter((pair) => pair.then === step).length]));
  const order: string[] = [];
  while (waiting.size > 0) {
    const free = [...waiting].filter(([, needs]) => needs === 0).map(([step]) => step);
    const next = shuffle(free, `${seed} ${order.length}`)[0]!;
    waiting.delete(next);
    order.push(next);
    for (const pair of pairs) if (pair.first === next) waiting.set(pair.then, waiting.get(pair.then)! - 1);
  }
  return order;
}
