/** Vapour that can burn, before hot work and before closing up; what is right is common practice of fire safety, by hand. */
import { describe, expect, test } from "vitest";
import type { Step } from "../../../src/engine/procedure/procedure.ts";
import type { Treatment } from "../../../src/engine/procedure/treatment.ts";
import { vapourFaults } from "../../../src/engine/procedure/vapour.ts";
import { act, emptyStep, fastenerSet, part, procedureOf } from "./random-procedure.ts";

const nothing: Treatment = {
  ...{ cleans: false, lubricates: false, oily: false },
  ...{ flammable: false, dries: false, hotWork: false },
};
const parts = [
  part("lid", { covers: ["wheel"] }),
  part("wheel", { in: "motor" }),
  part("motor", { heldBy: new Map([["bolts", { out: 2, slack: 0 }]]) }),
  part("hood", { covers: ["motor"] }),
];

function faults(steps: readonly Step[], does: Readonly<Record<string, Partial<Treatment>>>) {
  const procedure = procedureOf(parts, [fastenerSet("bolts", 2)], steps);
  const found = vapourFaults(procedure, steps, ({ id }) => ({ ...nothing, ...does[id] }));
  return found.map((fault) => Object.values(fault).join(" "));
}

const wash = emptyStep("wash", { acts: [act("work", "wheel")] });
const solder = emptyStep("solder", { acts: [act("work", "motor")] });
const flammable = { flammable: true };
const hot = { hotWork: true };

describe("hot work", () => {
  test("after flammable work, on another part too", () => {
    expect(faults([wash, solder], { wash: flammable, solder: hot })).toEqual(["hot solder wash"]);
  });

  test("with a wait between, on whichever step", () => {
    const rest = emptyStep("rest", { wait: 60 });
    expect(faults([wash, rest, solder], { wash: flammable, solder: hot })).toEqual([]);
  });

  test("with a drying step between: it must dry what was wet", () => {
    const dry = (target: string) => emptyStep("dry", { acts: [act("work", target)] });
    const does = { wash: flammable, dry: { dries: true }, solder: hot };
    expect(faults([wash, dry("wheel"), solder], does)).toEqual([]);
    expect(faults([wash, dry("motor"), solder], does)).toEqual(["hot solder wash"]);
  });

  test("before flammable work", () => {
    expect(faults([solder, wash], { wash: flammable, solder: hot })).toEqual([]);
  });

  test("and flammable work in one step, even one that dries", () => {
    expect(faults([solder], { solder: { ...hot, ...flammable, dries: true } })).toEqual([
      "hot solder solder",
    ]);
  });

  test("after flammable work on no part in particular", () => {
    expect(faults([emptyStep("wipe"), solder], { wipe: flammable, solder: hot })).toEqual([
      "hot solder wipe",
    ]);
  });
});

describe("closing up", () => {
  const open = emptyStep("open", { acts: [act("remove", "lid")] });
  const close = emptyStep("close", { acts: [act("refit", "lid")] });

  test("over what is wet", () => {
    expect(faults([open, wash, close], { wash: flammable })).toEqual(["shut-in close lid wheel wash"]);
  });

  test("in the step that wetted it", () => {
    const both = emptyStep("both", { acts: [act("work", "wheel"), act("refit", "lid")] });
    expect(faults([open, both], { both: flammable })).toEqual(["shut-in both lid wheel both"]);
  });

  test("over what has dried", () => {
    expect(faults([open, { ...wash, wait: 30 }, close], { wash: flammable })).toEqual([]);
    expect(faults([open, wash, close], { wash: { ...flammable, dries: true } })).toEqual([]);
  });

  test("over what is wet with something that does not burn", () => {
    expect(faults([open, wash, close], { wash: { cleans: true } })).toEqual([]);
  });

  test("while the wet part is on the bench", () => {
    const out = emptyStep("out", { acts: [act("remove", "wheel")] });
    expect(faults([open, out, wash, close], { wash: flammable })).toEqual([]);
  });

  test("over an assembly that holds what is wet, and over its fasteners", () => {
    const lift = emptyStep("lift", { acts: [act("remove", "hood")] });
    const drop = emptyStep("drop", { acts: [act("refit", "hood")] });
    expect(faults([open, lift, wash, drop], { wash: flammable })).toEqual(["shut-in drop hood wheel wash"]);
    const soak = emptyStep("soak", { acts: [act("work", "bolts")] });
    expect(faults([lift, soak, drop], { soak: flammable })).toEqual(["shut-in drop hood bolts soak"]);
  });
});
