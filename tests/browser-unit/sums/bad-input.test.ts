/** What is wrong with a field is told in the engine's words, as the command tells it. */
import { describe, expect, test } from "vitest";
import { askCommand, askPage, type Values } from "./ask.ts";

const bolt = { thread: "M6", class: "8.8", friction: "0.1" };
const hole = { thread: "M6", engagement: "8 mm", material: "brass", class: "8.8" };
const spill = { substance: "acetone", amount: "100 mL", room: "30 m³" };
const pan = { substance: "acetone", rate: "50 mL/h" };

/** The sum, the field that is wrong, and all that is filled in. */
const cases: readonly (readonly [id: string, field: string, values: Values])[] = [
  ["convert", "quantity", { quantity: "5 lbf·inn", unit: "N·m" }],
  ["convert", "quantity", { quantity: "1,234 mm", unit: "in" }],
  ["convert", "unit", { quantity: "5 lbf·in", unit: "mm" }],
  ["thread", "thread", { thread: "M6.5" }],
  ["thread", "thread", { thread: "1/4" }],
  ["thread", "thread", { thread: "constructor" }],
  ["identify", "diameter", { diameter: "5.95", pitch: "1 mm" }],
  ["identify", "diameter", { diameter: "2 m", pitch: "1 mm" }],
  ["identify", "tpi", { diameter: "5.95 mm", tpi: "1000" }],
  ["identify", "angle", { diameter: "5.95 mm", pitch: "1 mm", angle: "200" }],
  ["torque", "class", { ...bolt, class: "8.9" }],
  ["torque", "friction", { ...bolt, friction: "2" }],
  ["torque", "torque", { ...bolt, torque: "5 lb" }],
  ["torque", "share", { ...bolt, share: "1.2" }],
  ["torque", "nut-factor", { thread: "M6", class: "8.8", "nut-factor": "3" }],
  ["strip", "material", { ...hole, material: "zink" }],
  ["strip", "engagement", { ...hole, engagement: "8" }],
  ["strip", "shear", { thread: "M6", engagement: "8 mm", class: "8.8", shear: "100 N" }],
  ["vapour", "substance", { ...spill, substance: "white spirits" }],
  ["vapour", "amount", { ...spill, amount: "100" }],
  ["vapour", "room", { ...spill, room: "4 m x 3 m" }],
  ["vapour", "temperature", { ...spill, temperature: "90 °C" }],
  ["air", "rate", { ...pan, rate: "50 mL" }],
  ["air", "limit", { ...pan, limit: "0 ppm" }],
  ["air", "mixing", { ...pan, mixing: "20" }],
];

test.each(cases)("%s, %s: %j", async (id, field, values) => {
  const { code, err } = await askCommand(id, values);
  expect(code).toBe(2);
  const { answer, troubles } = askPage(id, values);
  expect(answer).toBeUndefined();
  expect(troubles.map((trouble) => trouble.field)).toEqual([field]);
  const said = /expected [\s\S]*$/.exec(err)![0].trim();
  expect(troubles[0]!.text.endsWith(said), `${troubles[0]!.text} for ${err}`).toBe(true);
  const [, found] = /found (.*?); expected/.exec(err) ?? [undefined, values[field]!];
  expect(troubles[0]!.text).toContain(found);
});

/** Two of a pair, or neither: the page tells it beside the second, or the first. */
const pairs: readonly (readonly [id: string, field: string, values: Values])[] = [
  ["identify", "tpi", { diameter: "6 mm", pitch: "1 mm", tpi: "20" }],
  ["identify", "pitch", { diameter: "6 mm" }],
  ["torque", "nut-factor", { ...bolt, "nut-factor": "0.2" }],
  ["torque", "friction", { thread: "M6", class: "8.8" }],
  ["torque", "share", { ...bolt, share: "0.5", torque: "5 N·m" }],
  ["torque", "head-friction", { thread: "M6", class: "8.8", "nut-factor": "0.2", "head-friction": "0.1" }],
  ["torque", "bearing", { ...bolt, bearing: "5 mm" }],
  ["strip", "shear", { ...hole, shear: "200 MPa" }],
  ["strip", "material", { thread: "M6", engagement: "8 mm", class: "8.8" }],
  ["vapour", "figures-from", { ...spill, gravity: "0.8" }],
];

test.each(pairs)("%s, %s: %j is refused by both", async (id, field, values) => {
  expect((await askCommand(id, values)).code).toBe(2);
  const { answer, troubles } = askPage(id, values);
  expect(answer).toBeUndefined();
  expect(troubles.map((trouble) => trouble.field)).toEqual([field]);
});

describe("every field at once", () => {
  test("that is empty and needed", () => {
    const fieldsOf = (id: string) =>
      askPage(id, {})
        .troubles.map(({ field }) => field)
        .sort();
    expect(fieldsOf("torque")).toEqual(["class", "friction", "thread"]);
    expect(fieldsOf("strip")).toEqual(["class", "engagement", "material", "thread"]);
    expect(fieldsOf("vapour")).toEqual(["amount", "room", "substance"]);
    expect(fieldsOf("air")).toEqual(["rate", "substance"]);
  });

  test("what is missing of a substance of one's own", () => {
    const own = {
      ...spill,
      substance: "another substance",
      "figures-from": "its data sheet",
      gravity: "0.8",
    };
    expect(askPage("vapour", own).troubles.map(({ field }) => field)).toEqual(["molar-mass", "lower-limit"]);
  });
});
