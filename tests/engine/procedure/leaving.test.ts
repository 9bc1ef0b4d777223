import { describe, expect, test } from "vitest";
import { type Dampness, type NeverLeft, unsafeAfter } from "../../../src/engine/procedure/leaving.ts";
import type { Step } from "../../../src/engine/procedure/procedure.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { act, emptyStep, fastenerSet, part, procedureOf } from "./random-procedure.ts";

const nothing: NeverLeft = { parts: new Set(), fasteners: new Map(), states: new Map() };
const parts = [part("lid"), part("new-lid", { replaces: "lid" }), part("wheel")];
const states = [
  { id: "power", name: "power", values: ["wound", "let down"], starts: "wound", ends: "wound" },
];

/** What is unsafe after each step, as words. */
function unsafe(
  steps: readonly Step[],
  neverLeft: Partial<NeverLeft>,
  damp: Readonly<Record<string, Dampness>> = {},
) {
  const procedure = procedureOf(parts, [fastenerSet("screws", 4)], steps, states);
  const found = unsafeAfter(
    procedure,
    steps,
    walk(procedure).trays,
    { ...nothing, ...neverLeft },
    ({ id }) => damp[id],
  );
  return found.map((list) => list.map((one) => Object.values(one).join(" ")));
}

describe("under tension, open or loose", () => {
  test("a state in a value in which it must not be left", () => {
    const steps = [
      emptyStep("look"),
      emptyStep("let-down", { makes: new Map([["power", "let down"]]) }),
      emptyStep("wind", { makes: new Map([["power", "wound"]]) }),
    ];
    expect(unsafe(steps, { states: new Map([["power", ["wound"]]]) })).toEqual([
      ["state power wound"],
      [],
      ["state power wound"],
    ]);
  });

  test("a part that must not be left off, until it or what takes its place is on", () => {
    const steps = [
      emptyStep("look"),
      emptyStep("open", { acts: [act("remove", "lid")] }),
      emptyStep("close", { acts: [act("refit", "new-lid")] }),
    ];
    expect(unsafe(steps, { parts: new Set(["lid"]) })).toEqual([[], ["open lid"], []]);
  });

  test("a slack screw where something hangs by it, and not in a part that lies in the tray (common practice)", () => {
    const collar = part("collar", { in: "shaft", heldBy: new Map([["grub", { out: 0, slack: 1 }]]) });
    const steps = [
      emptyStep("ease", { acts: [act("slacken", "grub")] }),
      emptyStep("shaft-out", { acts: [act("remove", "shaft")] }),
      emptyStep("collar-off", { acts: [act("remove", "collar")] }),
      emptyStep("undo", { acts: [act("remove", "grub")] }),
      emptyStep("screw-in", { acts: [act("refit", "grub")] }),
      emptyStep("collar-on", { acts: [act("refit", "collar")] }),
    ];
    const procedure = procedureOf([part("shaft"), collar], [fastenerSet("grub", 1)], steps);
    const found = (how: "slack" | "out") =>
      unsafeAfter(
        procedure,
        steps,
        walk(procedure).trays,
        { ...nothing, fasteners: new Map([["grub", [how]]]) },
        () => undefined,
      ).map((list) => list.length);
    expect(found("slack")).toEqual([1, 1, 0, 0, 0, 1]);
    expect(found("out")).toEqual([0, 0, 0, 1, 0, 0]);
  });

  test("a set of which some is slack, or some is out, as it says", () => {
    const steps = [
      emptyStep("ease", { acts: [act("slacken", "screws", 3)] }),
      emptyStep("undo", { acts: [act("remove", "screws")] }),
      emptyStep("refit", { acts: [act("refit", "screws", 1), act("tighten", "screws")] }),
      emptyStep("rest", { acts: [act("refit", "screws"), act("tighten", "screws")] }),
    ];
    const ways = (...how: ("slack" | "out")[]) => unsafe(steps, { fasteners: new Map([["screws", how]]) });
    expect(ways("slack")).toEqual([["loose screws slack 3"], [], [], []]);
    expect(ways("out")).toEqual([[], ["loose screws out 4"], ["loose screws out 3"], []]);
    expect(ways()).toEqual([[], [], [], []]);
  });
});

describe("wet", () => {
  const wash = emptyStep("wash", {
    acts: [act("work", "wheel"), act("work", "screws"), act("remove", "lid")],
  });
  const wetted = ["wet wheel wash", "wet screws wash"];

  test("what a step worked on with what has to dry, until a wait", () => {
    const steps = [wash, emptyStep("look"), emptyStep("air", { wait: 30 }), emptyStep("on")];
    expect(unsafe(steps, {}, { wash: "wets" })).toEqual([wetted, wetted, [], []]);
  });

  test("the step's own wait dries it too", () => {
    expect(unsafe([{ ...wash, wait: 1 }], {}, { wash: "wets" })).toEqual([[]]);
  });

  test("a step that dries does so to what it works on", () => {
    const wipe = emptyStep("wipe", { acts: [act("work", "wheel")] });
    expect(unsafe([wash, wipe], {}, { wash: "wets", wipe: "dries" })).toEqual([wetted, ["wet screws wash"]]);
  });

  test("a step that does neither leaves it as it is", () => {
    const oil = emptyStep("oil", { acts: [act("work", "wheel"), act("work", "screws")] });
    expect(unsafe([wash, oil], {}, { wash: "wets" })).toEqual([wetted, wetted]);
    expect(unsafe([wash, oil], {})).toEqual([[], []]);
  });
});
