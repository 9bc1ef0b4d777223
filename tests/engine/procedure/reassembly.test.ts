/** What was taken apart goes together again: the removals in reverse lead back to the tray before them. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Procedure, Step } from "../../../src/engine/procedure/procedure.ts";
import { type RefitStep, reassembly } from "../../../src/engine/procedure/reassembly.ts";
import { startingTray } from "../../../src/engine/procedure/tray.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { act, emptyStep, fastenerSet, part, procedureOf, soundProcedure } from "./random-procedure.ts";

/** The steps as they would be written, with the covers worked through and the states needed of what they undo. */
function asSteps(refits: readonly RefitStep[], steps: readonly Step[]): Step[] {
  return refits.map(({ undoes, refit, tighten, makes }, index) => {
    const undone = steps.find(({ id }) => id === undoes)!;
    const isState = makes.size > 0;
    return emptyStep(`back ${index}`, {
      acts: [
        ...refit.map(({ target, count }) => act("refit", target, count)),
        ...tighten.map(({ target, count }) => act("tighten", target, count)),
      ],
      makes,
      ...(isState
        ? {}
        : {
            through: undone.through.filter((cover) => !refit.some(({ target }) => target === cover)),
            while: undone.while,
          }),
    });
  });
}

test("however far a procedure has come in taking apart, putting back walks clean and ends as it began", () => {
  let puttingBack = 0;
  fc.assert(
    fc.property(soundProcedure, fc.nat(), (whole, at) => {
      const steps = whole.steps.slice(0, at % (whole.steps.length + 1));
      const half: Procedure = { ...whole, steps, leaves: new Map() };
      const { trays } = walk(half);
      const start = startingTray(half);
      const end = trays.at(-1) ?? start;
      fc.pre(
        ![...whole.parts.values()].some(({ id, replaces }) => replaces !== undefined && !end.parts.has(id)),
      );
      // Whatever was put back or tightened on the way may be in the way of the rest: its author must write that it comes off again.
      fc.pre(!steps.some(({ acts }) => acts.some(({ kind }) => kind === "refit" || kind === "tighten")));
      const back = asSteps(reassembly(half, trays), steps);
      const begins = { parts: [...end.parts], sets: [...end.sets] };
      const states = new Map(
        [...whole.states].map(([id, one]) => [id, { ...one, starts: end.states.get(id)! }]),
      );
      const walked = walk({ ...half, states, begins, steps: back });
      expect(walked.faults.filter(({ step }) => step !== undefined)).toEqual([]);
      const last = walked.trays.at(-1) ?? startingTray({ ...half, states, begins });
      expect([...last.parts].sort()).toEqual([...start.parts].sort());
      expect(last.sets).toEqual(start.sets);
      puttingBack += back.length;
    }),
  );
  expect(puttingBack).toBeGreaterThan(20);
});

const parts = [part("lid"), part("old"), part("new", { replaces: "old" })];
const screws = fastenerSet("screws", 3);

function back(steps: Step[], leaves: Procedure["leaves"] = new Map()) {
  const procedure = { ...procedureOf(parts, [screws], steps), leaves };
  return reassembly(procedure, walk(procedure).trays).map(({ undoes, refit, tighten }) => [
    undoes,
    ...refit.map(({ target, count }) => `refit ${target} ${count}`),
    ...tighten.map(({ target, count }) => `tighten ${target} ${count}`),
  ]);
}

test("what was refitted meanwhile, discarded, or has given its place away is not put back", () => {
  expect(
    back([emptyStep("a", { acts: [act("remove", "lid")] }), emptyStep("b", { acts: [act("refit", "lid")] })]),
  ).toEqual([]);
  const off = [emptyStep("a", { acts: [act("remove", "old")] })];
  expect(back(off)).toEqual([["a", "refit old undefined"]]);
  const discarded = { out: 1, slack: 0, fate: "discarded" as const, to: undefined };
  expect(back(off, new Map([["old", discarded]]))).toEqual([]);
  expect(back([...off, emptyStep("b", { acts: [act("refit", "new")] })])).toEqual([]);
});

test("of a set that was loosened again and again, each step's share; by hand", () => {
  const steps = [
    emptyStep("ease", { acts: [act("slacken", "screws", 1)] }),
    emptyStep("some", { acts: [act("remove", "screws", 2)] }),
    emptyStep("back", { acts: [act("refit", "screws", 1), act("tighten", "screws", 1)] }),
    emptyStep("rest", { acts: [act("remove", "screws")] }),
  ];
  // 1 slack; 2 out (tight ones go first), 1 slack; 1 out, 1 slack, 1 tight; 3 out.
  expect(back(steps)).toEqual([
    ["rest", "refit screws 2", "tighten screws 1"],
    ["some", "refit screws undefined", "tighten screws 1"],
    ["ease", "tighten screws undefined"],
  ]);
});
