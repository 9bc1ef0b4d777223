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

/** The mean of the knots' places, `other` where there are none. */
export function mean(knots: readonly Knot[], of: "rank" | "x", other: number): number {
  let sum = 0;
  for (const each of knots) sum += each[of];
  return knots.length === 0 ? other : sum / knots.length;
}
