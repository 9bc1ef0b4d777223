/** Oil and cleaning in their order; what is right is common practice of the trade, by hand. */
import { describe, expect, test } from "vitest";
import { oilFaults } from "../../../src/engine/procedure/oiling.ts";
import type { Treatment } from "../../../src/engine/procedure/treatment.ts";
import { act, emptyStep } from "./random-procedure.ts";

const nothing: Treatment = {
  ...{ cleans: false, lubricates: false, oily: false },
  ...{ flammable: false, dries: false, hotWork: false },
};

type Does = Partial<Treatment> & { readonly waits?: true; readonly on?: string };

/** Steps "0", "1", … that work on the shaft, or on what `on` says. */
function faults(does: readonly Does[], keepDry: readonly string[] = []) {
  const steps = does.map(({ waits, on }, index) =>
    emptyStep(String(index), { acts: [act("work", on ?? "shaft")], wait: waits ? 60 : 0 }),
  );
  const found = oilFaults(steps, ({ id }) => ({ ...nothing, ...does[Number(id)] }), new Set(keepDry));
  return found.map((fault) => Object.values(fault).join(" "));
}

const cleans = { cleans: true };
const oils = { lubricates: true, oily: true };
const dries = { dries: true };

describe("washed off", () => {
  test.each([
    ["oil after cleaning and drying", [{ ...cleans, waits: true as const }, oils], []],
    ["oil before the last cleaning", [oils, cleans], ["washed-off shaft 0 1"]],
    ["oil again after it", [oils, { ...cleans, ...dries }, oils], []],
    ["cleaning of another part", [oils, { ...cleans, on: "wheel" }], []],
    ["penetrating oil comes first, and is washed off", [{ oily: true }, cleans], []],
    ["cleaned and oiled in one step", [{ ...cleans, ...oils }], []],
    ["oil that cleans, washed off", [{ ...cleans, oily: true, ...dries }, { ...cleans, ...dries }, oils], []],
  ] satisfies [string, Does[], string[]][])("%s", (_, does, expected) => {
    expect(faults(does)).toEqual(expected);
  });
});

describe("on what is wet", () => {
  test.each([
    ["nothing dries it", [cleans, oils], ["on-wet shaft 1 0"]],
    ["a step dries it", [cleans, dries, oils], []],
    ["a step dries another part", [cleans, { ...dries, on: "wheel" }, oils], ["on-wet shaft 2 0"]],
    ["the cleaning dries", [{ ...cleans, ...dries }, oils], []],
    ["any step waits meanwhile", [cleans, { waits: true as const, on: "wheel" }, oils], []],
    ["the oiling itself dries it first", [cleans, { ...oils, ...dries }], []],
  ] satisfies [string, Does[], string[]][])("%s", (_, does, expected) => {
    expect(faults(does)).toEqual(expected);
  });
});

describe("what is kept dry", () => {
  test.each([
    ["no oil comes on it", [{ ...cleans, ...dries }], []],
    ["oil stays on it", [oils], ["kept-dry shaft 0"]],
    ["penetrating oil stays on it", [{ oily: true }], ["kept-dry shaft 0"]],
    ["cleaned afterwards, and not dried", [oils, cleans], ["kept-dry shaft 0"]],
    ["cleaned and dried afterwards", [oils, { ...cleans, ...dries }], []],
    ["cleaned afterwards, then left to dry", [oils, cleans, { waits: true as const }], []],
    ["dried without cleaning", [oils, dries], ["kept-dry shaft 0"]],
    ["cleaned with oil, and wiped dry", [{ ...cleans, oily: true, ...dries }], ["kept-dry shaft 0"]],
    ["oiled once more", [oils, { ...cleans, ...dries }, oils], ["kept-dry shaft 2"]],
  ] satisfies [string, Does[], string[]][])("%s", (_, does, expected) => {
    expect(faults(does, ["shaft"])).toEqual(expected);
  });
});

test("parts may have the names of what every object has", () => {
  expect(faults([{ ...oils, on: "constructor" }], ["constructor"])).toEqual(["kept-dry constructor 0"]);
});
