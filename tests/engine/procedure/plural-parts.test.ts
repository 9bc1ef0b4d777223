/** Parts of several pieces: sentences speak of many, and the tray counts the pieces. By the ear, and by hand. */
import { describe, expect, test } from "vitest";
import { hindranceWords } from "../../../src/browser/dry-run/hindrance-words.ts";
import { derivePrecedence } from "../../../src/engine/procedure/derive.ts";
import { labelsOf } from "../../../src/engine/procedure/labels.ts";
import { mergedReasons } from "../../../src/engine/procedure/merged-reasons.ts";
import { packProcedure, unpackProcedure } from "../../../src/engine/procedure/packed.ts";
import type { Step } from "../../../src/engine/procedure/procedure.ts";
import { startingTray } from "../../../src/engine/procedure/tray.ts";
import { accountsOfTrays } from "../../../src/engine/procedure/tray-account.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { act, emptyStep, fastenerSet, part, procedureOf } from "./random-procedure.ts";

/** Two guards cover three levers, which one pin holds and which lie in two arms. */
const machine = (...steps: Partial<Step>[]) => ({
  ...procedureOf(
    [
      part("guards", { count: 2, covers: ["levers"], keep: "tray 1" }),
      part("arms", { count: 2 }),
      part("levers", {
        count: 3,
        in: "arms",
        heldBy: new Map([["pin", { out: 1, slack: 0 }]]),
        keep: "tray 1",
      }),
      part("new-levers", { name: "new levers", count: 3, replaces: "levers" }),
    ],
    [],
    steps.map((step, index) => emptyStep(`s${index}`, step)),
  ),
  fasteners: new Map([["pin", { ...fastenerSet("pin", 1), matched: false }]]),
});

const remove = (id: string) => ({ acts: [act("remove", id)] });
const refit = (id: string) => ({ acts: [act("refit", id)] });
const work = (id: string) => ({ acts: [act("work", id)] });

describe("reasons", () => {
  test.each([
    [remove("guards"), work("levers"), "the guards are still on: they cover the levers"],
    [
      refit("guards"),
      { ...work("levers"), acts: [act("work", "levers")] },
      "the guards go back on first: they cover the levers",
    ],
    [work("levers"), refit("guards"), "once the guards are back on, they cover the levers"],
    [
      work("levers"),
      remove("guards"),
      "the levers are seen to before the removal of the guards, lying on top",
    ],
    [remove("levers"), work("levers"), "the levers are worked on after coming off"],
    [refit("levers"), refit("pin"), "the levers must be in place before the pin, which holds them"],
    [remove("levers"), refit("pin"), "the pin holds the levers, which must come off first"],
    [work("pin"), refit("levers"), "the pin holds the levers, and is seen to before the refitting"],
    [remove("arms"), work("levers"), "the levers lie in the arms, which must come out first"],
    [work("levers"), refit("arms"), "the levers are seen to before the arms, in which they lie, can go back"],
    [work("arms"), remove("levers"), "the arms are worked on before the levers come out"],
    [
      work("levers"),
      { acts: [act("tighten", "pin")] },
      "the levers are seen to before being held tight by the pin",
    ],
  ])("%#: %o", (first, then, because) => {
    const [pair] = derivePrecedence(machine(first, then)).pairs;
    expect(pair?.because).toContain(because);
  });

  test("of several things are merged", () => {
    const covers = (what: string) => `the guards are still on: they cover ${what}`;
    expect(mergedReasons([covers("the levers"), covers("the pin")])).toEqual([
      covers("the levers and the pin"),
    ]);
  });
});

test("what stands in the way at the machine", () => {
  const said = hindranceWords(
    [
      { step: "x", kind: "cover-on", cover: "guards", act: "work", target: "levers" },
      { step: "x", kind: "part-off", part: "levers" },
      { step: "x", kind: "part-on", part: "levers" },
      { step: "x", kind: "place-taken", part: "new-levers", by: "levers" },
    ],
    machine(),
  );
  expect(said).toEqual([
    "The guards are still on: they cover the levers.",
    "The levers are off already.",
    "The levers are still on.",
    "The levers are still in the place of the new levers.",
  ]);
});

describe("the tray", () => {
  const whole = machine(remove("guards"), { acts: [act("remove", "pin"), act("remove", "levers")] });
  const trays = [startingTray(whole), ...walk(whole).trays];

  test.each([
    ["as it is", whole],
    ["as a page carries it", unpackProcedure(JSON.parse(JSON.stringify(packProcedure(whole))))],
  ])("counts the pieces to look for: %s", (_, walked) => {
    const [first, second] = accountsOfTrays(walked, trays);
    const entries = (account = first) =>
      account!.compartments.flatMap(({ entries }) =>
        entries.map(({ id, count, change }) => [id, count, change]),
      );
    // The new levers lie there from the start.
    expect(entries()).toEqual([
      ["new-levers", 3, 0],
      ["guards", 2, 2],
    ]);
    expect(first!.total).toBe(5);
    expect(second!.total).toBe(9);
    expect(entries(second)).toContainEqual(["levers", 3, 3]);
  });

  test("labels too", () => {
    const things = labelsOf(whole, trays).flatMap(({ things }) => things.map(({ id, count }) => [id, count]));
    expect(things).toEqual([
      ["new-levers", 3],
      ["guards", 2],
      ["levers", 3],
      ["pin", 1],
    ]);
  });
});
