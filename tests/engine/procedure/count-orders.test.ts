import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { factorial, multinomial, ratio } from "../../../src/engine/procedure/big-numbers.ts";
import { countByDownSets } from "../../../src/engine/procedure/count-down-sets.ts";
import { countExtensions, countOrders } from "../../../src/engine/procedure/count-orders.ts";
import {
  acyclicArrows,
  builtGraph,
  builtPoset,
  isRight,
  permutations,
  precedenceOf,
  reachability,
} from "./sample-orders.ts";

type Arrows = number[][];

const slow = { timeout: 60_000 };

const count = (arrows: Arrows) => countOrders(builtGraph(precedenceOf(arrows)));
const product = (from: number, to: number): bigint => (from > to ? 1n : BigInt(to) * product(from, to - 1));

/** A grid of so many elements along each axis. */
function grid(rows: number, columns: number): Arrows {
  return Array.from({ length: rows * columns }, (_, cell) => [
    ...(cell % columns < columns - 1 ? [cell + 1] : []),
    ...(cell + columns < rows * columns ? [cell + columns] : []),
  ]);
}

function fence(size: number): Arrows {
  return Array.from({ length: size }, (_, i) =>
    i % 2 ? [] : [i - 1, i + 1].filter((j) => j >= 0 && j < size),
  );
}

describe("against enumeration", () => {
  test("of all orders, up to 7 steps", () => {
    fc.assert(
      fc.property(acyclicArrows(0, 7), (arrows) => {
        const reach = reachability(arrows);
        const right = permutations([...arrows.keys()]).filter((order) => isRight(reach, order)).length;
        const { orders, chance } = count(arrows);
        expect(orders).toBe(BigInt(right));
        expect(chance).toBeCloseTo(right / Number(product(1, arrows.length)), 14);
      }),
      { numRuns: 60 },
    );
  });

  test("of right orders one after the other, 8 steps", () => {
    fc.assert(
      fc.property(acyclicArrows(8, 8), (arrows) => {
        const reach = reachability(arrows);
        let orders: number[][] = [[]];
        for (let size = 0; size < 8; size++) {
          orders = orders.flatMap((order) =>
            [...arrows.keys()]
              .filter((step) => !order.includes(step))
              .filter((step) => reach.every((row, other) => !row[step] || order.includes(other)))
              .map((step) => [...order, step]),
          );
        }
        expect(count(arrows).orders).toBe(BigInt(orders.length));
      }),
      { numRuns: 40 },
    );
  });

  test("splitting makes no difference", () => {
    fc.assert(
      fc.property(acyclicArrows(0, 16), (arrows) => {
        const poset = builtPoset(arrows);
        expect(countExtensions(poset, 2_000_000)!.orders).toBe(countByDownSets(poset, 2_000_000)!.orders);
      }),
      { numRuns: 100 },
    );
  });
});

describe("against closed formulas", () => {
  test("hook lengths of Young diagrams (Frame, Robinson, Thrall 1954)", () => {
    const shapes = fc
      .array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 5 })
      .map((lengths) => lengths.sort((a, b) => b - a));
    fc.assert(
      fc.property(shapes, (lengths) => {
        const cells = lengths.flatMap((length, row) =>
          Array.from({ length }, (_, column) => ({ row, column })),
        );
        const at = (row: number, column: number) =>
          cells.findIndex((c) => c.row === row && c.column === column);
        const arrows = cells.map(({ row, column }) =>
          [at(row, column + 1), at(row + 1, column)].filter((cell) => cell >= 0),
        );
        const hooks = cells.map(({ row, column }) => {
          const arm = lengths[row]! - column - 1;
          const leg = lengths.filter((length, below) => below > row && length > column).length;
          return BigInt(arm + leg + 1);
        });
        expect(count(arrows).orders).toBe(product(1, cells.length) / hooks.reduce((a, b) => a * b));
      }),
      { numRuns: 80 },
    );
  });

  test("forests: n! over the sizes of all subtrees (Knuth, The Art of Computer Programming 3, 5.1.4 exercise 20)", () => {
    const forests = fc.array(fc.nat(), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(forests, (dice) => {
        // The parent of each node is an earlier one, or none.
        const parents = dice.map((die, node) => (die % (node + 1)) - 1);
        const arrows: Arrows = parents.map(() => []);
        const sizes = parents.map(() => 1n);
        for (const [node, parent] of [...parents.entries()].reverse()) {
          if (parent < 0) continue;
          arrows[parent]!.push(node);
          sizes[parent]! += sizes[node]!;
        }
        expect(count(arrows).orders).toBe(product(1, dice.length) / sizes.reduce((a, b) => a * b));
      }),
      { numRuns: 100 },
    );
  });

  test("chains side by side: a multinomial; layers one after the other: a product of factorials", () => {
    const lengths = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(lengths, (sizes) => {
        const starts = sizes.map((_, i) => sizes.slice(0, i).reduce((a, b) => a + b, 0));
        const total = sizes.reduce((a, b) => a + b);
        const sideBySide = sizes.flatMap((size, i) =>
          Array.from({ length: size }, (_, at) => (at + 1 < size ? [starts[i]! + at + 1] : [])),
        );
        const layered = sizes.flatMap((size, i) =>
          Array.from({ length: size }, () =>
            Array.from({ length: sizes[i + 1] ?? 0 }, (_, at) => starts[i + 1]! + at),
          ),
        );
        const factorials = sizes.map((size) => product(1, size)).reduce((a, b) => a * b);
        expect(count(sideBySide).orders).toBe(product(1, total) / factorials);
        expect(count(layered).orders).toBe(factorials);
        expect(multinomial(sizes)).toBe(product(1, total) / factorials);
      }),
      { numRuns: 60 },
    );
  });

  test("a grid of 9 by 9, in about 50,000 down-sets", () => {
    const hooks = grid(9, 9).map((_, cell) => BigInt(17 - (cell % 9) - Math.floor(cell / 9)));
    expect(count(grid(9, 9)).orders).toBe(product(1, 81) / hooks.reduce((a, b) => a * b));
  });
});

describe("limits", () => {
  test("exactly as many down-sets as allowed are counted, one more is refused", () => {
    // Paths through the grid: 10 over 5 = 252 down-sets. Its number is A039622, from memory.
    const poset = builtPoset(grid(5, 5));
    expect(countByDownSets(poset, 252)).toEqual({ orders: 701149020n, downSets: 252 });
    expect(countByDownSets(poset, 251)).toBeNull();
    // The first and the last step stand in series with the rest, so only 250 are gone through.
    const graph = builtGraph(precedenceOf(grid(5, 5)));
    expect(countOrders(graph, 250)).toMatchObject({ orders: 701149020n, reason: null });
    expect(countOrders(graph, 249)).toMatchObject({
      orders: null,
      chance: null,
      steps: 25,
      width: 5,
      height: 9,
    });
  });

  test("parts count together", () => {
    const twice = [...grid(3, 3), ...grid(3, 3).map((heads) => heads.map((head) => head + 9))];
    const poset = builtPoset(twice);
    const one = countExtensions(builtPoset(grid(3, 3)), 100)!.downSets;
    expect(countExtensions(poset, 2 * one)!.orders).toBe(42n * 42n * multinomial([9, 9]));
    expect(countExtensions(poset, 2 * one - 1)).toBeNull();
  });

  test("above 2,000,000 it says so: by width at once, by number after going through them", slow, () => {
    const { orders, chance, reason, width } = count(fence(60));
    expect([orders, chance, width]).toEqual([null, null, 30]);
    expect(reason).toContain("more than 2,000,000");
    // 26 over 13 = 10,400,600 down-sets.
    expect(count(grid(13, 13)).orders).toBeNull();
  });

  test("2,000 steps side by side, in a chain, or nested by turns in parallel and in series", slow, () => {
    const size = 2000;
    const free: Arrows = Array.from({ length: size }, () => []);
    const chain = free.map((_, i) => (i + 1 < size ? [i + 1] : []));
    const nested = free.map((_, i) =>
      i % 2 ? Array.from({ length: size - 1 - i }, (_, k) => i + 1 + k) : [],
    );
    expect(count(free)).toMatchObject({ orders: factorial(size), chance: 1, width: size, height: 1 });
    expect(count(chain)).toMatchObject({ orders: 1n, chance: 0, width: 1, height: size });
    // Each even element may stand anywhere among all that follow it.
    const evens = [...free.keys()].filter((i) => i % 2 === 0).map((i) => BigInt(size - i));
    expect(count(nested).orders).toBe(evens.reduce((a, b) => a * b));
  });

  test("no steps at all have one order", () => {
    expect(count([])).toEqual({ steps: 0, width: 0, height: 0, orders: 1n, chance: 1, reason: null });
  });
});

describe("the chance that a random order is right", () => {
  test("is exact where numbers are", () => {
    expect(ratio(1n, 3n)).toBe(1 / 3);
    expect(ratio(5n, 24n)).toBe(5 / 24);
    expect(ratio(factorial(300), factorial(300))).toBe(1);
    expect(ratio(factorial(300), factorial(301))).toBe(1 / 301);
  });

  test("is neither NaN nor 0 as long as a number can hold it", () => {
    let reciprocal = 1;
    for (let n = 1; n <= 176; n++) {
      reciprocal /= n;
      // Below 2.2e-308 numbers lose digits, at 1/176! they have 4 bits left.
      const digits = n <= 170 ? 12 : 1;
      expect(ratio(1n, factorial(n)) / reciprocal).toBeCloseTo(1, digits);
    }
    expect(ratio(1n, factorial(178))).toBe(0);
  });

  test("of a grid of 9 by 9 is that of its hook lengths", () => {
    const hooks = grid(9, 9).map((_, cell) => 17 - (cell % 9) - Math.floor(cell / 9));
    const expected = hooks.reduce((chance, hook) => chance / hook, 1);
    expect(count(grid(9, 9)).chance! / expected).toBeCloseTo(1, 12);
  });
});
