import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatQuantity } from "../../../src/engine/workshop/format-quantity.ts";
import {
  convert,
  parseQuantity,
  type Quantity,
  type QuantityCode,
  spanInBase,
} from "../../../src/engine/workshop/quantity.ts";
import { type Dimension, dimensions, unitsOf } from "../../../src/engine/workshop/units.ts";

function read(text: string): Quantity {
  const result = parseQuantity(text);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.problem)}`);
  return result.value;
}

function codeOf(text: string, dimension?: Dimension): QuantityCode | "read" {
  const result = parseQuantity(text, dimension);
  return result.ok ? "read" : result.problem.code;
}

describe("what people write", () => {
  test.each<[string, number, string, Dimension]>([
    ["0.9 N·m", 0.9, "N·m", "torque"],
    ["0.9 Nm", 0.9, "N·m", "torque"],
    ["0.9 N m", 0.9, "N·m", "torque"],
    ["0.9 N.m", 0.9, "N·m", "torque"],
    ["0.9 N⋅m", 0.9, "N·m", "torque"],
    [".9 newton metres", 0.9, "N·m", "torque"],
    ["90 N·cm", 90, "N·cm", "torque"],
    ["8 lbf·in", 8, "lbf·in", "torque"],
    ["8 in-lb", 8, "lbf·in", "torque"],
    ["8 in.-lbs.", 8, "lbf·in", "torque"],
    ["6 ft-lb", 6, "lbf·ft", "torque"],
    ["12 ozf·in", 12, "ozf·in", "torque"],
    ["12 oz-in", 12, "ozf·in", "torque"],
    ["3.5 kgf·cm", 3.5, "kgf·cm", "torque"],
    ["3.5kg-cm", 3.5, "kgf·cm", "torque"],
    ["5/16 in", 0.3125, "in", "length"],
    ["5⁄16″", 0.3125, "in", "length"],
    ['1/2"', 0.5, "in", "length"],
    ["1 1/4 in", 1.25, "in", "length"],
    ["1-1/4 Inches", 1.25, "in", "length"],
    ["½ in", 0.5, "in", "length"],
    ["1½ in", 1.5, "in", "length"],
    ["1 ⅜ in", 1.375, "in", "length"],
    ["20 thou", 20, "thou", "length"],
    ["5 µm", 5, "μm", "length"],
    ["3 ft", 3, "ft", "length"],
    ["150 mL", 150, "mL", "volume"],
    ["150 ml", 150, "mL", "volume"],
    ["2 fl oz", 2, "US fl oz", "volume"],
    ["2 fl. oz.", 2, "US fl oz", "volume"],
    ["2 imp fl oz", 2, "imp fl oz", "volume"],
    ["4 mm²", 4, "mm²", "area"],
    ["4 mm^2", 4, "mm²", "area"],
    ["800 N/mm²", 800, "MPa", "pressure"],
    ["10 kgf/mm2", 10, "kgf/mm²", "pressure"],
    ["30 m3/h", 30, "m³/h", "flow"],
    ["25 °C", 25, "°C", "temperature"],
    ["25C", 25, "°C", "temperature"],
    ["25 ℃", 25, "°C", "temperature"],
    ["77 ° F", 77, "°F", "temperature"],
    ["-40 deg F", -40, "°F", "temperature"],
    ["−40 °F", -40, "°F", "temperature"],
    ["5 min", 5, "min", "time"],
    ["2 hours", 2, "h", "time"],
    ["2 h 30 min", 150, "min", "time"],
    ["2h30min", 150, "min", "time"],
    ["1 h 2 min 3 s", 3723, "s", "time"],
    ["-1 h 30 min", -90, "min", "time"],
    ["-0 h 30 min", -30, "min", "time"],
    [`1' 2 1/2"`, 14.5, "in", "length"],
    ["1 lb 4 oz", 20, "oz", "mass"],
    ["80 %", 80, "%", "number"],
    ["80%", 80, "%", "number"],
    ["12", 12, "", "number"],
    ["+12", 12, "", "number"],
    ["1e3 mm", 1000, "mm", "length"],
    ["90°", 90, "°", "angle"],
    ["1 1/2 turns", 1.5, "turn", "angle"],
    ["78 rpm", 78, "rpm", "rotation"],
    ["  5\u00a0mm ", 5, "mm", "length"],
  ])("%s", (text, amount, unit, dimension) => {
    expect(parseQuantity(text)).toMatchObject({ ok: true, value: { amount, unit, dimension } });
  });

  test("an inch and 25.4 mm have the same base", () => {
    expect(read("1 in").base).toBe(read("25.4 mm").base);
    expect(read("80 %").base).toBe(0.8);
  });

  test("a dimension asked for is the only one let in", () => {
    expect(codeOf("5 min", "time")).toBe("read");
    expect(parseQuantity("5 mm²", "angle")).toMatchObject({
      problem: { found: "5 mm², an area", expected: "an angle" },
    });
    expect(parseQuantity("5 m", "time")).toMatchObject({
      problem: { code: "dimension", found: "5 m, a length", expected: "a time" },
    });
  });
});

describe("commas", () => {
  test.each([
    ["1,5", 1.5],
    ["0,75", 0.75],
    ["12,34", 12.34],
    ["0,234", 0.234],
    ["1,2345", 1.2345],
    [",5", 0.5],
    ["1234,567", 1234.567],
  ])("%s is a decimal comma", (text, amount) => {
    expect(read(`${text} mm`).amount).toBe(amount);
  });

  test.each(["1,234", "12,345", "123,456", "1,000", "-1,234 mm"])("%s could be either", (text) => {
    expect(codeOf(text)).toBe("ambiguous-number");
  });

  test.each(["1,234,567", "1,234.5", "1.234,5", "1 234 mm", "1,", "12, 5"])("%s is refused", (text) => {
    expect(codeOf(text)).toBe("number");
  });
});

describe("what is refused", () => {
  test.each<[string, QuantityCode]>([
    ["", "empty"],
    [" \t", "empty"],
    ["-", "empty"],
    ["mm", "number"],
    ["NaN", "number"],
    ["Infinity", "number"],
    ["∞ mm", "number"],
    ["1e999", "too-large"],
    ["-1e999 mm", "too-large"],
    ["1e308 kgf/mm²", "too-large"],
    ["1e-999 mm", "too-small"],
    ["1/0 in", "number"],
    ["1 5/4 in", "number"],
    ["1.2.3 mm", "number"],
    ["1/2/3 in", "number"],
    ["5-10 mm", "number"],
    ["5 – 10 mm", "number"],
    ["٣ mm", "digits"],
    ["５ mm", "digits"],
    ["1٣ mm", "digits"],
    ["5 nm", "unknown-unit"],
    ["5 mpa", "unknown-unit"],
    ["5 constructor", "unknown-unit"],
    ["5 furlong", "unknown-unit"],
    ["0x10", "unknown-unit"],
    ["2 gal", "ambiguous-unit"],
    ["1 Pint", "ambiguous-unit"],
    ["2 h 90 min", "compound"],
    ["2.5 h 10 min", "compound"],
    ["30 min 2 h", "compound"],
    ["5 m 30 s", "compound"],
    ["20 °C 5 °C", "compound"],
    ["5 mm and 3 mm", "unknown-unit"],
    [`${"9".repeat(101)} mm`, "too-long"],
  ])("%s", (text, code) => {
    expect(codeOf(text)).toBe(code);
  });

  test("a problem with the capitals names the unit that was meant", () => {
    expect(parseQuantity("5 nm")).toMatchObject({ problem: { found: "nm", nearest: "N·m" } });
  });

  test("any text gives a finite quantity or a problem in words", () => {
    const pieces = fc.constantFrom(
      "1",
      "2/3",
      "½",
      ",",
      ".",
      "-",
      "e9",
      " ",
      "in",
      "h",
      "min",
      "N·m",
      "°",
      "%",
      "٣",
    );
    const texts = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces).map((parts) => parts.join("")),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const result = parseQuantity(text);
        if (result.ok) {
          expect(Number.isFinite(result.value.amount) && Number.isFinite(result.value.base)).toBe(true);
        } else {
          expect(result.problem.found).not.toBe("");
          expect(result.problem.expected).not.toBe("");
        }
      }),
      { numRuns: 2000 },
    );
  });
});

const unitPair = fc
  .constantFrom(...dimensions)
  .chain((dimension) =>
    fc.tuple(fc.constantFrom(...unitsOf(dimension)), fc.constantFrom(...unitsOf(dimension))),
  );
const everyday = fc.integer({ min: -1e6, max: 1e6 }).map((thousandths) => thousandths / 1000);

describe("conversion", () => {
  test("there and back again", () => {
    fc.assert(
      fc.property(unitPair, everyday, ([from, to], amount) => {
        const there = convert(read(`${amount} ${from.unit}`), to.unit);
        const back = there.ok ? convert(read(`${there.value.amount} ${to.unit}`), from.unit) : there;
        // Fifteen figures are kept; beside an offset of 460 a small amount keeps fewer.
        const loss = 1e-12 * Math.max(Math.abs(amount), Math.abs(from.offset), Math.abs(to.offset));
        expect(back.ok && Math.abs(back.value.amount - amount) <= loss).toBe(true);
      }),
    );
  });

  test("one dimension never becomes another", () => {
    for (const from of dimensions) {
      for (const to of dimensions.filter((other) => other !== from)) {
        const quantity = read(`1 ${unitsOf(from)[0]!.unit}`);
        expect(convert(quantity, unitsOf(to)[0]!.unit)).toMatchObject({ problem: { code: "dimension" } });
      }
    }
  });

  test.each([
    // NIST SP 811, B.8, to the figures that it prints.
    ["8 lbf·in", "N·m", 8 * 0.1129848],
    ["10 lbf·ft", "N·m", 13.55818],
    ["12 ozf·in", "mN·m", 12 * 7.061552],
    ["1 lbf·ft", "lbf·in", 12],
    ["1/2 in", "mm", 12.7],
    ["25 °C", "°F", 77],
    ["80 %", "", 0.8],
    ["90 min", "h", 1.5],
  ])("%s in %s", (text, unit, expected) => {
    const result = convert(read(text), unit);
    expect(result.ok && Math.abs(result.value.amount / expected - 1)).toBeLessThan(5e-7);
  });

  test("too large for a number, or into no unit", () => {
    expect(convert(read("1e306 m"), "μm")).toMatchObject({ problem: { code: "too-large" } });
    expect(convert(read("1 m"), "ells")).toMatchObject({ problem: { code: "unknown-unit" } });
  });

  test("a difference of temperature has no offset", () => {
    expect(spanInBase(read("9 °F"))).toBeCloseTo(5, 12);
    expect(spanInBase(read("5 K"))).toBe(5);
    expect(spanInBase(read("5 mm"))).toBe(0.005);
  });
});

describe("in words", () => {
  test.each([
    [0.90387863, "N·m", "0.9039 N·m"],
    [150, "mL", "150 mL"],
    [-40, "°C", "−40 °C"],
    [1.5, "°", "1.5°"],
    [12, "", "12"],
    [-0, "mm", "0 mm"],
    [123456.7, "N", "123457 N"],
    [25.400000000000002, "mm", "25.4 mm"],
    [1.5e-9, "m", "1.5e-9 m"],
    [2e300, "m", "2e300 m"],
  ])("%s %s", (amount, unit, words) => {
    expect(formatQuantity({ amount, unit })).toBe(words);
  });

  test("are read again, to the figures printed", () => {
    fc.assert(
      fc.property(unitPair, everyday, ([unit], amount) => {
        const again = read(formatQuantity({ amount, unit: unit.unit }));
        expect(again.unit).toBe(unit.unit);
        expect(Math.abs(again.amount - amount)).toBeLessThanOrEqual(5.001e-4 * Math.abs(amount));
      }),
    );
  });
});

describe("advice", () => {
  test.each([
    ["5 lbfin", "lbf·in"],
    ["5 milimetres", "mm"],
    ["5 Newton meter", "N·m"],
    ["5 inchs", "in"],
    ["3 minuts", "min"],
  ])("%s: the nearest unit known", (text, nearest) => {
    const result = parseQuantity(text);
    const found = result.ok ? result.value.unit : result.problem.nearest;
    expect(found).toBe(nearest);
  });

  test("nothing is near", () => {
    expect(parseQuantity("5 furlong")).toMatchObject({
      problem: { code: "unknown-unit", nearest: undefined },
    });
    expect(parseQuantity(`5 ${"x".repeat(90)}`)).toMatchObject({ problem: { nearest: undefined } });
  });

  test.each<[string, Dimension, RegExp]>([
    ["5 kg", "force", /a force: for the weight of a mass write kgf/],
    ["5 N", "mass", /a mass: for a mass write kg/],
    ["5 lb", "torque", /a torque: a force on an arm/],
    ["5 N", "torque", /a torque: a force on an arm/],
    ["5 N·m", "force", /a force: without the arm/],
    ["5", "length", /a length: write its unit, such as m/],
    ["5 mL", "flow", /a flow: so much in a time/],
    ["5 m", "volume", /length x width x height/],
  ])("%s where a %s is meant", (text, dimension, says) => {
    expect(parseQuantity(text, dimension)).toMatchObject({
      problem: { code: "dimension", expected: expect.stringMatching(says) },
    });
  });

  test("a mass is not converted into a force, nor a force into a torque", () => {
    expect(convert(read("5 kg"), "N")).toMatchObject({ problem: { code: "dimension" } });
    expect(convert(read("5 N"), "N·m")).toMatchObject({ problem: { code: "dimension" } });
  });
});

test("there and back again by any two units of a dimension", () => {
  const pairs = dimensions.flatMap((dimension) =>
    unitsOf(dimension).flatMap((one) => unitsOf(dimension).map((other) => [one.unit, other.unit] as const)),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      ([one, other], amount) => {
        const from = read(`${Number(amount.toFixed(6))} ${one}`);
        const there = convert(from, other);
        const back = there.ok ? convert(there.value, one) : there;
        if (!back.ok) throw new Error(JSON.stringify(back.problem));
        // 15 figures are kept on each way; a temperature loses those of the zero of its scale.
        const slack = from.dimension === "temperature" ? 1e-9 : 0;
        expect(Math.abs(back.value.amount - from.amount)).toBeLessThanOrEqual(
          1e-13 * Math.abs(from.amount) + slack,
        );
      },
    ),
    { numRuns: 1000 },
  );
});
