import { expect, test } from "vitest";
import { convert, parseQuantity, type Quantity } from "../../../src/engine/workshop/quantity.ts";
import { findUnit, foldUnit } from "../../../src/engine/workshop/unit-names.ts";
import { baseUnits, dimensions, unitsOf } from "../../../src/engine/workshop/units.ts";
import { expectNear } from "./table.ts";

function read(text: string): Quantity {
  const result = parseQuantity(text);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.problem)}`);
  return result.value;
}

function inUnit(quantity: Quantity, unit: string): number {
  const result = convert(quantity, unit);
  if (!result.ok) throw new Error(`${unit}: ${JSON.stringify(result.problem)}`);
  return result.value.amount;
}

test.each([
  // Definitions: 1 lb = 0.45359237 kg, g = 9.80665 m/s², 1 in = 25.4 mm, 1 US gal = 231 in³, 1 imp gal = 4.54609 L.
  ["lbf·ft", 0.45359237 * 9.80665 * 0.3048],
  ["lbf·in", 0.45359237 * 9.80665 * 0.0254],
  ["ozf·in", (0.45359237 / 16) * 9.80665 * 0.0254],
  ["gf·cm", 1e-3 * 9.80665 * 1e-2],
  ["psi", (0.45359237 * 9.80665) / 0.0254 ** 2],
  ["kgf/cm²", 9.80665 * 1e4],
  ["US fl oz", (231 * 0.0254 ** 3) / 128],
  ["US qt", (231 * 0.0254 ** 3) / 4],
  ["imp pt", 4.54609e-3 / 8],
  ["imp qt", 4.54609e-3 / 4],
  ["in²", 0.0254 ** 2],
  ["in³", 0.0254 ** 3],
  ["L/min", 1e-3 / 60],
  ["L/h", 1e-3 / 3600],
  ["m³/h", 1 / 3600],
  ["rpm", 1 / 60],
  ["week", 7 * 24 * 3600],
  ["turn", 360],
  ["rad", 180 / Math.PI],
])("%s by its definition", (unit, factor) => {
  // 15 figures are kept.
  expectNear(read(`1 ${unit}`).base, factor, 1e-14, unit);
});

test("absolute zero and the freezing point of water, from the definition of the kelvin", () => {
  expect(inUnit(read("0 K"), "°C")).toBe(-273.15);
  expect(inUnit(read("273.15 K"), "°F")).toBe(32);
});

test("every spelling in the table leads to its own unit, and stands there as it is looked up", () => {
  for (const dimension of dimensions) {
    for (const { unit, symbols, words } of unitsOf(dimension)) {
      for (const name of [unit, ...symbols, ...words]) {
        expect(findUnit(name)?.unit, `${dimension}: ${name}`).toBe(unit);
      }
      expect([...symbols, ...words].map(foldUnit), unit).toEqual([...symbols, ...words]);
      expect(
        words.map((word) => word.toLowerCase()),
        unit,
      ).toEqual(words);
    }
  }
});

test("every base unit has the factor 1 and no offset", () => {
  for (const dimension of dimensions) {
    expect(findUnit(baseUnits[dimension])).toMatchObject({ dimension, factor: 1, offset: 0 });
  }
});
