import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { number, numberSetting } from "../../../src/engine/quiz/number.ts";
import { compare, whole } from "../../../src/engine/quiz/ratio.ts";
import { formatWithTolerance, readTolerance } from "../../../src/engine/quiz/tolerance.ts";
import { convert, parseQuantity, type Quantity } from "../../../src/engine/workshop/quantity.ts";
import { dimensions, unitsOf } from "../../../src/engine/workshop/units.ts";
import { quantityQuestion } from "./questions.ts";

function quantity(text: string): Quantity {
  const read = parseQuantity(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}

function isRight(question: ReturnType<typeof quantityQuestion>, given: unknown): boolean | string {
  const read = number.read(question, given);
  if (read.state !== "answered") return read.state;
  return compare(number.judge(question, read.answer).credit, whole) === 0;
}

describe("a quantity within the tolerance is right", () => {
  test.each<[string, string | undefined, unknown, boolean | string]>([
    ["0.9 N·m", "5 %", "0.9 N·m", true],
    ["0.9 N·m", "5 %", "0.855 Nm", true],
    ["0.9 N·m", "5 %", "0.945 Nm", true],
    ["0.9 N·m", "5 %", "0.854 Nm", false],
    ["0.9 N·m", "5 %", "0.946 Nm", false],
    // 8 lbf·in is 0.9039 N·m and 7 lbf·in 0.7909 N·m by NIST SP 811.
    ["0.9 N·m", "5 %", "8 in-lb", true],
    ["0.9 N·m", "5 %", "7 in-lb", false],
    ["0.9 N·m", "5 %", "90 N·cm", true],
    ["0.9 N·m", "0.05 N·m", "0.85 N·m", true],
    ["0.9 N·m", "0.05 N·m", "0.95 N·m", true],
    ["0.9 N·m", "5 N·cm", "0.95 N·m", true],
    ["0.9 N·m", "0.05", "0.95 N·m", true],
    ["0.9 N·m", "0.05", "0.951 N·m", false],
    ["0.9 N·m", "5 %", "0.9 N", false],
    ["0.9 N·m", "5 %", "0,9", true],
    ["0.9 N·m", "5 %", 0.9, true],
    ["0.9 N·m", "5 %", "-0.9 N·m", false],
    ["1/4 in", "1 %", "6.35 mm", true],
    ["1/4 in", "1 %", "1/4", true],
    ["1/4 in", "0.1 mm", "6.45 mm", true],
    ["1/4 in", "0.1 mm", "6.46 mm", false],
    ["25 °C", "2 °C", "77 °F", true],
    ["25 °C", "2 °C", "80.6 °F", true],
    ["25 °C", "2 °C", "81 °F", false],
    ["25 °C", "9 °F", "30 °C", true],
    ["25 °C", "9 °F", "30.1 °C", false],
    ["0 °C", "1 K", "32 °F", true],
    ["80 %", "5 %", "75 %", true],
    ["80 %", "5 %", "74 %", false],
    ["80 %", "5 %", "80", true],
    ["80 %", "5 %", "0.8", false],
    ["0.8", "5 %", "80 %", true],
    ["12", undefined, "12", true],
    ["12", undefined, 12, true],
    ["12", undefined, "12.0", true],
    ["12", undefined, "13", false],
    ["12", "1", "13", true],
    ["20", undefined, "1,234", "unreadable"],
    ["0.9 N·m", "5 %", "snug", "unreadable"],
    ["0.9 N·m", "5 %", "0.9 nm", "unreadable"],
    ["0.9 N·m", "5 %", ["0.9 N·m"], "unreadable"],
    ["0.9 N·m", "5 %", true, "unreadable"],
    ["0.9 N·m", "5 %", Number.NaN, "unreadable"],
    ["0.9 N·m", "5 %", " ", "blank"],
    ["0.9 N·m", "5 %", null, "blank"],
  ])("%s within %s: %j", (answer, tolerance, given, expected) => {
    expect(isRight(quantityQuestion("q", answer, tolerance), given)).toBe(expected);
  });

  test("in any unit of the dimension, and in no other", () => {
    const questions = fc
      .constantFrom(...dimensions)
      .chain((dimension) =>
        fc.tuple(
          fc.constantFrom(...unitsOf(dimension)),
          fc.constantFrom(...unitsOf(dimension)),
          fc.constantFrom(...dimensions.filter((other) => other !== dimension)),
          fc.integer({ min: 1, max: 1e6 }),
        ),
      );
    fc.assert(
      fc.property(questions, ([unit, other, foreign, hundredths]) => {
        const question = quantityQuestion("q", `${hundredths / 100} ${unit.unit}`, `0.001 ${unit.unit}`);
        const converted = convert(question.answer, other.unit);
        // A bare number is one in the unit asked for, so that of a dimensionless question is told by its unit.
        if (converted.ok && other.unit !== "") {
          expect(isRight(question, `${converted.value.amount} ${other.unit}`)).toBe(true);
        }
        const { unit: stranger } = unitsOf(foreign).at(-1)!;
        expect(isRight(question, `${hundredths / 100} ${stranger}`)).toBe(false);
      }),
    );
  });
});

describe("what can't be read is told with what to write", () => {
  const expectedOf = (answer: string, given: unknown) => {
    const read = number.read(quantityQuestion("q", answer, undefined), given);
    return read.state === "unreadable" ? [read.problem.found, read.problem.expected] : read.state;
  };
  const alone = "the number alone, in figures, without a word or a unit";

  test.each([
    ["3", "three", ["three", alone]],
    ["3", "3 screws", ["3 screws", alone]],
    ["3", "about 3", ["about 3", alone]],
    // A unit that is known is read, and judged as what it is.
    ["3", "3 mm", "answered"],
    ["3 mm", "3 screws", ["screws", "a unit such as N·m, mm, in, mL, °C or min"]],
  ])("%s: %s", (answer, given, told) => {
    expect(expectedOf(answer, given)).toEqual(told);
  });
});

describe("tolerances", () => {
  test.each([
    ["0.9 N·m", "-5 %", "negative"],
    ["0.9 N·m", "2 mm", "dimension"],
    ["25 °C", "5 %", "share-of-temperature"],
    ["12", "2 mm", "dimension"],
    ["0.9 N·m", "a bit", "number"],
    ["0.9 N·m", "", "empty"],
  ])("of %s: %s is refused", (answer, tolerance, code) => {
    expect(readTolerance(quantity(answer), tolerance)).toMatchObject({ ok: false, problem: { code } });
  });

  test.each([
    ["0.9 N·m", "5 %", "0.9 N·m ± 5 %"],
    ["0.9 N·m", "0.05", "0.9 N·m ± 0.05 N·m"],
    ["80 %", "5 %", "80 % ± 5 %"],
    ["0.9 N·m", "7 %", "0.9 N·m ± 7 %"],
  ])("of %s: %s in words", (answer, tolerance, words) => {
    const question = quantityQuestion("q", answer, tolerance);
    expect(formatWithTolerance(question.answer, question.tolerance)).toBe(words);
  });
});

describe("remarks", () => {
  const question = quantityQuestion("q", "0.9 N·m", "5 %");

  test.each([
    ["8 lbf·in", "right", ""],
    ["5 lbf·in", "wrong", "0.5649 N·m is too low"],
    ["2 N·m", "wrong", "too high"],
    ["5 mm", "wrong", "the answer is a torque, not a length"],
  ])("on %s", (given, verdict, because) => {
    expect(number.remarks(question, quantity(given))).toEqual([
      { verdict, about: [given, "0.9 N·m ± 5 %"], because },
    ]);
  });

  test("on no answer", () => {
    expect(number.remarks(question, undefined)).toEqual([
      { verdict: "missed", about: ["0.9 N·m ± 5 %"], because: "" },
    ]);
  });
});

test.each<[string, string | undefined, string[]]>([
  ["0.9 N·m", "5 %", []],
  ["0.9 N·m", undefined, ["tolerance-missing"]],
  ["4 mm", undefined, ["tolerance-missing"]],
  ["1.5", undefined, ["tolerance-missing"]],
  ["12", undefined, []],
  ["12", "0", []],
  ["0.9 N·m", "0 %", ["tolerance-zero"]],
  ["0 N·m", "5 %", ["tolerance-zero"]],
  ["0.9 N·m", "100 %", ["tolerance-too-wide"]],
  ["0.9 N·m", "1 N·m", ["tolerance-too-wide"]],
  ["0 °C", "2 °C", []],
  ["5 °C", "9 °C", []],
])("mistakes of the author: %s within %s", (answer, tolerance, codes) => {
  expect(numberSetting.problems(quantityQuestion("q", answer, tolerance)).map(({ code }) => code)).toEqual(
    codes,
  );
});
