/** The tray and what the walk refuses. Counts are worked out by hand; that refitted screws are slack is common practice. */
import { describe, expect, test } from "vitest";
import type { Step } from "../../../src/engine/procedure/procedure.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { act, emptyStep, fastenerSet, part, procedureOf } from "./random-procedure.ts";

const parts = [
  part("lid", { heldBy: new Map([["screws", { out: 2, slack: 1 }]]), covers: ["motor"] }),
  part("motor", { heldBy: new Map([["bolts", { out: 1, slack: 0 }]]) }),
  part("spring", { in: "motor", onlyWhile: new Map([["power", "let down"]]) }),
  part("new-spring", { replaces: "spring" }),
];
const sets = [fastenerSet("screws", 3), fastenerSet("bolts", 1)];
const states = [
  { id: "power", name: "power", values: ["wound", "let down"], starts: "wound", ends: "wound" },
];

const walkSteps = (...steps: Partial<Step>[]) =>
  walk(
    procedureOf(
      parts,
      sets,
      steps.map((step, index) => emptyStep(`s${index}`, step)),
      states,
    ),
  );

const faultsOf = (...steps: Partial<Step>[]) =>
  walkSteps(...steps).faults.filter((fault) => fault.step !== undefined);

const open = { acts: [act("slacken", "screws", 1), act("remove", "screws", 2), act("remove", "lid")] };

describe("counts", () => {
  test("slacken, remove, refit and tighten keep the count of the set", () => {
    const { trays } = walkSteps(
      { acts: [act("slacken", "screws", 1)] },
      { acts: [act("remove", "screws", 1)] },
      { acts: [act("remove", "screws")] },
      { acts: [act("refit", "screws", 2)] },
      { acts: [act("tighten", "screws", 1)] },
    );
    expect(trays.map((tray) => tray.sets.get("screws"))).toEqual([
      { tight: 2, slack: 1, out: 0 },
      { tight: 1, slack: 1, out: 1 },
      { tight: 0, slack: 0, out: 3 },
      { tight: 0, slack: 2, out: 1 },
      { tight: 1, slack: 1, out: 1 },
    ]);
  });

  test("what takes another part's place starts off the machine", () => {
    expect([...walkSteps({}).trays[0]!.parts]).toEqual(["new-spring"]);
  });
});

describe("what can't be done", () => {
  test("a part comes free when enough of its fasteners are out and enough more are slack", () => {
    expect(faultsOf(open)).toEqual([]);
    expect(faultsOf({ acts: [act("slacken", "screws", 2), act("remove", "lid")] })).toMatchObject([
      { kind: "still-held", part: "lid", set: "screws", tight: 1, slack: 2 },
    ]);
    expect(faultsOf({ acts: [act("remove", "screws", 2), act("remove", "lid")] })).toMatchObject([
      { kind: "still-held", tight: 1, slack: 0 },
    ]);
  });

  test("a part goes back only into empty holes", () => {
    expect(faultsOf(open, { acts: [act("refit", "screws"), act("refit", "lid")] })).toMatchObject([
      { kind: "in-the-way", part: "lid" },
    ]);
  });

  test("what is covered can't be touched, nor the fasteners that hold it, nor what lies in it", () => {
    for (const target of ["motor", "bolts", "spring"]) {
      expect(faultsOf({ acts: [act("work", target)] })).toMatchObject([
        { kind: "cover-on", cover: "lid", target },
      ]);
    }
    expect(faultsOf({ acts: [act("work", "motor")], through: ["lid"] })).toEqual([]);
    expect(faultsOf(open, { acts: [act("work", "motor")], through: ["lid"] })).toMatchObject([
      { kind: "cover-off", cover: "lid" },
    ]);
  });

  test("a cover may hide some fasteners of a part and leave the part and its others within reach", () => {
    const rail = part("rail", { covers: ["left", "stud"] });
    const bed = part("bed", {
      heldBy: new Map([
        ["left", { out: 1, slack: 0 }],
        ["right", { out: 1, slack: 0 }],
      ]),
    });
    const of = (...steps: Partial<Step>[]) =>
      walk(
        procedureOf(
          [rail, bed],
          [fastenerSet("left", 1), fastenerSet("right", 1), fastenerSet("stud", 1)],
          steps.map((step, index) => emptyStep(`s${index}`, step)),
        ),
      ).faults.filter(({ step }) => step !== undefined);
    expect(of({ acts: [act("work", "bed"), act("remove", "right")] })).toEqual([]);
    for (const set of ["left", "stud"])
      expect(of({ acts: [act("remove", set)] })).toEqual([
        { step: "s0", kind: "cover-on", cover: "rail", act: "remove", target: set },
      ]);
    const strip = {
      acts: [act("remove", "rail"), ...["left", "right", "bed"].map((id) => act("remove", id))],
    };
    expect(of(strip, { acts: [act("refit", "rail")] }, { acts: [act("work", "left")] })).toEqual([]);
  });

  test("what is on the bench is under no cover: neither an assembly nor what lies in it", () => {
    const out = { acts: [act("remove", "bolts"), act("remove", "motor")] };
    const shut = { acts: [act("refit", "lid")] };
    expect(faultsOf(open, out, shut, { acts: [act("work", "motor"), act("work", "spring")] })).toEqual([]);
    expect(faultsOf(open, out, shut, { acts: [act("refit", "motor")] })).toMatchObject([
      { kind: "cover-on", target: "motor" },
    ]);
  });

  test("a state that a step or a part needs must hold", () => {
    expect(faultsOf(open, { acts: [act("remove", "spring")] })).toMatchObject([
      { kind: "wrong-state", part: "spring", value: "wound", needed: "let down" },
    ]);
    expect(
      faultsOf({ makes: new Map([["power", "let down"]]) }, open, { acts: [act("remove", "spring")] }),
    ).toEqual([]);
    expect(faultsOf({ while: new Map([["power", "let down"]]) })).toMatchObject([
      { kind: "wrong-state", part: "" },
    ]);
  });

  test("a new part goes only where the old one has made room, and then that is no fault at the end", () => {
    const down = { makes: new Map([["power", "let down"]]) };
    const wound = { makes: new Map([["power", "wound"]]) };
    const close = { acts: [act("refit", "lid"), act("refit", "screws"), act("tighten", "screws")] };
    expect(faultsOf(down, open, { acts: [act("refit", "new-spring")] })).toMatchObject([
      { kind: "place-taken", by: "spring" },
    ]);
    const swap = { acts: [act("remove", "spring"), act("refit", "new-spring")] };
    expect(walkSteps(down, open, swap, close, wound).faults).toEqual([]);
  });

  test.each([
    [act("remove", "screws"), { act: "remove", wanted: 3, there: 0 }],
    [act("slacken", "screws", 1), { act: "slacken", wanted: 1, there: 0 }],
    [act("refit", "screws", 4), { act: "refit", wanted: 4, there: 3 }],
    [act("tighten", "screws"), { act: "tighten", wanted: 3, there: 0 }],
  ])("more than there are: %o", (more, fault) => {
    expect(faultsOf({ acts: [act("remove", "screws")] }, { acts: [more] })).toMatchObject([
      { kind: "too-many", set: "screws", ...fault },
    ]);
  });

  test("nothing comes off or goes on twice", () => {
    expect(faultsOf(open, { acts: [act("remove", "lid")] })).toMatchObject([
      { kind: "part-off", part: "lid" },
    ]);
    expect(faultsOf({ acts: [act("remove", "screws", 3), act("refit", "lid")] })).toMatchObject([
      { kind: "part-on", part: "lid" },
    ]);
  });
});

describe("what is left at the end", () => {
  test("is a fault where the procedure does not say so", () => {
    expect(walkSteps(open, { makes: new Map([["power", "let down"]]) }).faults).toEqual([
      { step: undefined, kind: "ends-off", part: "lid" },
      { step: undefined, kind: "ends-out", set: "screws", out: 2, slack: 1 },
      { step: undefined, kind: "ends-state", state: "power", value: "let down", needed: "wound" },
    ]);
  });

  test("is none where it says so, and it must be so then", () => {
    const left = { fate: "left", to: undefined } as const;
    const leaves = new Map([
      ["lid", { out: 1, slack: 0, ...left }],
      ["screws", { out: 2, slack: 1, ...left }],
    ]);
    expect(walk(procedureOf(parts, sets, [emptyStep("s", open)], states, leaves)).faults).toEqual([]);
    expect(walk(procedureOf(parts, sets, [], states, leaves)).faults).toMatchObject([
      { kind: "ends-on", part: "lid" },
      { kind: "ends-out", out: 0 },
    ]);
  });
});
