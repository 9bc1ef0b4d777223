/** Which row of the drawing each step stands in. */
import type { Band } from "./bands.ts";

/** Two steps of which the first stands higher where both are in one band. */
export interface Link {
  readonly first: string;
  readonly then: string;
}

export interface Rows {
  readonly of: ReadonlyMap<string, number>;
  /** The first row of each band. Above each but the first there is a row where lines pass from band to band. */
  readonly firsts: readonly number[];
  readonly count: number;
}

/** `most` steps at most stand in a row. O(links + steps · rows). */
export function rowsOf(bands: readonly Band[], links: readonly Link[], most: number): Rows {
  const [before, after] = [neighbours(links, "then", "first"), neighbours(links, "first", "then")];
  const of = new Map<string, number>();
  const firsts: number[] = [];
  let count = -1;
  for (const { steps } of bands) {
    const first = count + 1;
    firsts.push(first);
    for (const [step, row] of rowsWithin(steps, before, after, most)) {
      of.set(step, first + row);
      count = Math.max(count, first + row + 1);
    }
  }
  return { of, firsts, count: Math.max(0, count) };
}

type Neighbours = ReadonlyMap<string, readonly string[]>;

function neighbours(links: readonly Link[], from: keyof Link, to: keyof Link): Neighbours {
  const found = new Map<string, string[]>();
  for (const link of links) {
    const list = found.get(link[from]);
    if (list === undefined) found.set(link[from], [link[to]]);
    else list.push(link[to]);
  }
  return found;
}

/**
 * Each step as high as can be; then each that has more after it than before it sinks towards what follows it, so that
 * lines are short. Rows left empty are closed.
 */
function rowsWithin(steps: readonly string[], before: Neighbours, after: Neighbours, most: number) {
  const row = new Map<string, number>();
  const held: number[] = [];
  const put = (step: string, to: number) => {
    held[to] = (held[to] ?? 0) + 1;
    row.set(step, to);
  };
  for (const step of steps) {
    let to = 1 + Math.max(-1, ...(before.get(step) ?? []).map((other) => row.get(other) ?? -1));
    while (held[to] === most) to++;
    put(step, to);
  }
  for (const step of steps.toReversed()) {
    const thens = after.get(step) ?? [];
    if (thens.length <= (before.get(step) ?? []).length) continue;
    const from = row.get(step)!;
    let to = Math.min(held.length, ...thens.map((other) => row.get(other) ?? held.length)) - 1;
    while (to > from && held[to] === most) to--;
    held[from]!--;
    put(step, to);
  }
  const closed = held.map((_, index) => held.slice(0, index).filter((count) => count > 0).length);
  return new Map([...row].map(([step, at]) => [step, closed[at]!]));
}
