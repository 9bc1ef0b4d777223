/** A procedure that begins where another one has left off. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { derivePrecedence } from "../../../src/engine/procedure/derive.ts";
import type { Procedure } from "../../../src/engine/procedure/procedure.ts";
import { startingTray, type Tray } from "../../../src/engine/procedure/tray.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { sampleRightOrder } from "../../support/right-order.ts";
import { fastenerSet, part, procedureOf, soundProcedure } from "./random-procedure.ts";

/** The steps from `cut` on, by themselves, beginning with what the earlier ones have left. */
function rest(whole: Procedure, cut: number, before: Tray): Procedure {
  const begins = { parts: [...before.parts], sets: [...before.sets] };
  const states = new Map(
    [...whole.states].map(([id, state]) => [id, { ...state, starts: before.states.get(id)! }]),
  );
  return { ...whole, states, steps: whole.steps.slice(cut), begins };
}

/** A spare part that has been fitted is no spare one for what comes after. */
const hasFittedSpare = (whole: Procedure, before: Tray): boolean =>
  [...whole.parts.values()].some(({ id, replaces }) => replaces !== undefined && !before.parts.has(id));

test("cut in two, a procedure walks on as it would have, and every right order of the rest walks clean", () => {
  fc.assert(
    fc.property(soundProcedure, fc.nat(), fc.string(), (whole, at, seed) => {
      const cut = at % (whole.steps.length + 1);
      const { trays } = walk(whole);
      const before = trays[cut - 1] ?? startingTray(whole);
      fc.pre(!hasFittedSpare(whole, before));
      const half = rest(whole, cut, before);
      const sorted = (tray: Tray) => ({ ...tray, parts: new Set([...tray.parts].sort()) });
      expect(walk(half).trays.map(sorted)).toEqual(trays.slice(cut).map(sorted));
      const byId = new Map(half.steps.map((step) => [step.id, step]));
      const order = sampleRightOrder(derivePrecedence(half), seed).map((id) => byId.get(id)!);
      expect(walk(half, order).faults).toEqual([]);
    }),
  );
});

test("what it does not know is left out, and no more is loose than there is", () => {
  const machine = procedureOf(
    [part("lid"), part("spare", { replaces: "lid" })],
    [fastenerSet("screws", 4)],
    [],
  );
  const begins = {
    parts: ["lid", "constructor"],
    sets: [
      ["screws", { out: 3, slack: 2 }],
      ["pins", { out: 1, slack: 0 }],
    ] as const,
  };
  const tray = startingTray({ ...machine, begins });
  expect([...tray.parts]).toEqual(["lid", "spare"]);
  expect([...tray.sets]).toEqual([["screws", { tight: 0, slack: 1, out: 3 }]]);
});
