/** What stands in a layer of the drawing: a step, or the place where a line passes through. */

export interface Knot {
  readonly layer: number;
  readonly width: number;
  readonly above: Knot[];
  readonly below: Knot[];
  rank: number;
  x: number;
}

export function knot(layer: number, width: number): Knot {
  return { layer, width, above: [], below: [], rank: 0, x: 0 };
}

/** Joins two steps by way of a knot in each layer between them. */
export function thread(first: Knot, then: Knot, rows: Knot[][], lineWidth: number): Knot[] {
  const chain = [first];
  for (let layer = first.layer + 1; layer < then.layer; layer++) {
    const passing = knot(layer, lineWidth);
    rows[layer]!.push(passing);
    chain.push(passing);
  }
  chain.push(then);
  for (let i = 1; i < chain.length; i++) {
    chain[i - 1]!.below.push(chain[i]!);
    chain[i]!.above.push(chain[i - 1]!);
  }
  return chain;
}

/** The mean, undefined for none. */
export function mean(numbers: readonly number[]): number | undefined {
  return numbers.length === 0 ? undefined : numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
}
