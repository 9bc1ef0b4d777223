import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compare, over, plus, ratio, ratioOf, times, toNumber } from "../../../src/engine/quiz/ratio.ts";

const parts = fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 1000 }));

describe("exact fractions", () => {
  test("a number is the decimal that it prints as", () => {
    expect(ratioOf(0.1)).toEqual(ratio(1, 10));
    expect(ratioOf(2.5)).toEqual(ratio(5, 2));
    expect(ratioOf(-0.75)).toEqual(ratio(-3, 4));
    expect(ratioOf(1e-7)).toEqual({ top: 1n, bottom: 10n ** 7n });
    expect(ratioOf(1.5e300)).toEqual({ top: 15n * 10n ** 299n, bottom: 1n });
    expect(() => ratioOf(Number.NaN)).toThrow(RangeError);
    expect(() => ratioOf(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });

  test("0.1 + 0.2 is 0.3", () => {
    expect(plus(ratioOf(0.1), ratioOf(0.2))).toEqual(ratioOf(0.3));
  });

  test("any finite number comes back", () => {
    const numbers = fc.oneof(
      fc.integer().map((thousandths) => thousandths / 1000),
      fc.constantFrom(1e-9, 123456.789, 1.7976931348623157e308, -0.1),
    );
    fc.assert(
      fc.property(numbers, (value) => {
        expect(toNumber(ratioOf(value))).toBe(value === 0 ? 0 : value);
      }),
    );
  });

  test("parts too long for a number still show", () => {
    const power = 10n ** 400n;
    expect(toNumber({ top: 2n * power, bottom: 3n * power + 1n })).toBeCloseTo(2 / 3, 15);
  });

  test("sums, products and quotients agree with whole numbers over one bottom", () => {
    fc.assert(
      fc.property(parts, parts, ([a, b], [c, d]) => {
        expect(plus(ratio(a, b), ratio(c, d))).toEqual(ratio(a * d + c * b, b * d));
        expect(times(ratio(a, b), ratio(c, d))).toEqual(ratio(a * c, b * d));
        expect(over(ratio(a, b), ratio(d, b))).toEqual(ratio(a, d));
        expect(compare(ratio(a, b), ratio(c, d))).toBe(Math.sign(a * d - c * b));
      }),
    );
  });
});
