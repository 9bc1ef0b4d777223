/** What makes no sense is refused by every sum, in every option: what was found, what is expected, never NaN, never a stack. */
import { describe, expect, test } from "vitest";
import { type Range, type RangeName, ranges } from "../../src/engine/workshop/asked/ranges.ts";
import { callCommand } from "../support/call-command.ts";

interface Sound {
  /** Words that follow `calc`. */
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string>>;
  /** Further options that make sense beside them, each with a sound value; of those in a list, in place of the one named. */
  readonly more: Readonly<Record<string, string>>;
  readonly instead?: Readonly<Record<string, string>>;
}

const own = {
  ...{ "molar-mass": "92", gravity: "0.87", "lower-limit": "1.1 %", "exposure-limit": "20 ppm" },
  ...{ flash: "4 °C", boils: "110 °C", temperature: "20 °C" },
};
const bolt = { bearing: "12 mm", hole: "7 mm" };

/** A sound call of each sum, in both its forms where it has two. */
const sums: readonly Sound[] = [
  {
    words: ["thread"],
    options: { diameter: "5.95 mm", pitch: "1 mm" },
    more: { angle: "60°", tpi: "20" },
    instead: { tpi: "pitch" },
  },
  {
    words: ["torque"],
    options: { thread: "M6", class: "8.8", friction: "0.12" },
    more: { "head-friction": "0.1", share: "0.5", torque: "5 N·m", ...bolt, "nut-factor": "0.2" },
    instead: { "nut-factor": "friction" },
  },
  {
    words: ["strip"],
    options: { thread: "M6", engagement: "8 mm", material: "brass", screw: "8.8" },
    more: { friction: "0.1", ...bolt, shear: "200 MPa" },
    instead: { shear: "material" },
  },
  {
    words: ["vapour"],
    options: { substance: "acetone", amount: "100 mL", room: "30 m³", "figures-from": "its sheet" },
    more: own,
  },
  {
    words: ["air"],
    options: { substance: "acetone", rate: "50 mL/h", "figures-from": "its sheet" },
    more: { ...own, limit: "100 ppm", mixing: "5" },
  },
];

const calc = (words: readonly string[], options: Readonly<Record<string, string>>) =>
  callCommand("calc", ...words, ...Object.entries(options).map(([name, value]) => `--${name}=${value}`));

/** The options of a sound call with one of them set, and what it stands in place of left out. */
function withOption({ options, instead }: Sound, name: string, value: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries({ ...options, [name]: value }).filter(([other]) => other !== instead?.[name]),
  );
}

const options = sums.flatMap((sum) =>
  Object.entries({ ...sum.options, ...sum.more })
    .filter(([name]) => name !== "figures-from")
    .map(([name, value]) => [sum.words.join(" "), name, value, sum] as const),
);

test.each(options)("%s --%s=%s makes sense", async (_sum, name, value, sum) => {
  const { code, out, err } = await calc(sum.words, withOption(sum, name, value));
  expect([code, err]).toEqual([0, ""]);
  expect(out).not.toMatch(/NaN|Infinity|undefined/);
});

/** A message that teaches: one line for what is wrong, by the option's name, with what is expected. */
function expectRefusal({ code, out, err }: Awaited<ReturnType<typeof callCommand>>, name: string): void {
  expect([code, out], err).toEqual([2, ""]);
  expect(err).toContain(name);
  expect(err).toMatch(/(?:found .+; |is missing; )expected .+\.\n$/s);
  expect(err).not.toMatch(/NaN (?!mm)|undefined|\n\s+at |\bError\b|fault of benchwright/);
  expect(err.length).toBeLessThan(700);
}

const nonsense = [
  "",
  " ",
  "abc",
  "constructor",
  "__proto__",
  "½½",
  "1 2 3",
  "\u0000",
  "x".repeat(5000),
  "💧",
  "<b>",
];

/** Names, of which numbers make no more sense than other nonsense. */
const named = new Set(["thread", "class", "screw", "material", "substance"]);

describe.each(options)("%s --%s", (_sum, name, _value, sum) => {
  test("nonsense, and nothing at all", async () => {
    for (const value of nonsense) {
      if (name === "substance" && value.trim() !== "") continue;
      const isEmpty = value.trim() === "" && !(name in sum.options);
      if (isEmpty) continue;
      expectRefusal(await calc(sum.words, withOption(sum, name, value)), `--${name}`);
    }
  });

  test("infinite, huge and of the wrong kind", async () => {
    if (name === "substance")
      return expectRefusal(await calc(sum.words, { ...sum.options, substance: "" }), "--substance");
    const wrong = name === "torque" || named.has(name) ? "5 kg" : "5 N·m";
    for (const value of ["Infinity", "-Infinity", "NaN", "1e400", "1e400 mm", "1e300", "1e300 m", wrong])
      expectRefusal(await calc(sum.words, withOption(sum, name, value)), `--${name}`);
  });
});

/** A unit in which the figure of a range can be written. */
const written = (range: Range, amount: number): string => `${amount} ${range.unit}`.trim();

/** At nothing and below it these are sound. */
const anyTemperature = new Set(["temperature", "flash", "boils"]);
/** A part of the air, of which "1" is all. */
const measured = options.filter(([, name]) => name in ranges && !anyTemperature.has(name));

describe.each(measured)("%s --%s", (_sum, name, _value, sum) => {
  const range: Range = ranges[name as RangeName];

  test("zero and negative", async () => {
    for (const amount of [0, -1, -0.5, -1e9])
      expectRefusal(await calc(sum.words, withOption(sum, name, written(range, amount))), `--${name}`);
  });
});

test.each(options.filter(([, name]) => name in ranges))(
  "%s --%s at the ends of its range: an answer in figures, or a refusal",
  async (_sum, name, _value, sum) => {
    const { least, greatest }: Range = ranges[name as RangeName];
    for (const value of [least, greatest]) {
      const { code, out, err } = await calc(sum.words, withOption(sum, name, value));
      expect([0, 2], err).toContain(code);
      expect(out + err).not.toMatch(/NaN|Infinity|undefined|\n\s+at /);
      if (code === 2) expect(err).toMatch(/expected .+\.\n$/s);
    }
  },
);

test.each([
  ["torque", "thread", "M6.5", "M7"],
  ["torque", "thread", "2 BB", "2 BA"],
  ["torque", "thread", "M6x0.8", "M6x0.75"],
  ["torque", "class", "8.9", "8.8"],
  ["strip", "screw", "A2-71", "A2-70"],
  ["strip", "material", "bras", "brass"],
  ["strip", "material", "zink-3", "zinc-3"],
])("%s --%s %s: the nearest is offered, %s", async (word, name, value, nearest) => {
  const sum = sums.find(({ words }) => words[0] === word)!;
  const refused = await calc(sum.words, withOption(sum, name, value));
  expectRefusal(refused, `--${name}`);
  expect(refused.err).toMatch(RegExp(`(?:nearest(?: known)? is|expected) ${nearest.replace(".", "\\.")}\\b`));
});

test("an unknown substance: the nearest is offered", async () => {
  for (const [word, rest] of [
    ["vapour", { amount: "100 mL", room: "30 m³" }],
    ["air", { rate: "50 mL/h" }],
  ] as const) {
    const { code, err } = await calc([word], { substance: "white spirits", ...rest });
    expect(code).toBe(2);
    expect(err).toContain("The nearest known is white-spirit.");
  }
});

test("every field that is wrong is told of at once", async () => {
  const { err } = await calc(["torque"], { thread: "M6.5", class: "8.9", friction: "abc", torque: "5 kg" });
  expect(
    err
      .trimEnd()
      .split("\n")
      .map((line) => line.split(":")[0]),
  ).toEqual(["--thread", "--class", "--friction", "--torque"]);
});

describe("words without an option", () => {
  const wrong = [...nonsense, "Infinity mm", "1e400 mm", "NaN mm", "1e300", "5", "-5 nonsense"];

  test.each(wrong)("convert %j into mm", async (value) => {
    // A bare number is a quantity, but none of length: that is told of the unit.
    expectRefusal(
      await callCommand("calc", "convert", value, "mm"),
      /^[\d.e]+$/.test(value) ? "The unit" : "The quantity",
    );
  });

  test.each([...nonsense, "N·m", "5", "nm"])("convert 5 mm into %j", async (unit) => {
    const { code, out, err } = await callCommand("calc", "convert", "5 mm", unit);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/expected .+\.\n$/s);
    expect(err).not.toMatch(/undefined|\n\s+at /);
  });

  test.each([...nonsense, "M0", "M-6", "M1e400", "M6x0", "1/0-20 UNC", "#99-1", "5 mm", "99 BA"])(
    "thread %j",
    async (name) => {
      expectRefusal(await callCommand("calc", "thread", name), "The thread");
    },
  );
});
