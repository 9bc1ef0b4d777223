import { expect, test } from "vitest";
import { labelsOf } from "../../../src/engine/procedure/labels.ts";
import type { FastenerSet, Part } from "../../../src/engine/procedure/procedure.ts";
import { startingTray } from "../../../src/engine/procedure/tray.ts";
import { walkOfProcedure } from "../../../src/engine/procedure/walk-of-procedure.ts";
import { millSite } from "../../render/fixture.ts";

const { procedure } = millSite().mill.module;
const labelsOfMill = () =>
  labelsOf(procedure, [startingTray(procedure), ...walkOfProcedure(procedure).trays]);

test("a label for each place, in the order in which the places fill, with what lies there from which step to which", () => {
  // Read off the mill by hand: step 2 takes the guard off, 3 the shaft, 4 changes the felt, 5 and 6 put shaft and guard on.
  const said = labelsOfMill().map(({ place, things }) => [
    place,
    things.map(({ name, count, numbered, stays }) => [name, count, numbered, stays]),
  ]);
  expect(said).toEqual([
    ["to be fitted", [["new felt", 1, undefined, [{ out: undefined, back: 4 }]]]],
    ["tray 1", [["guard screws", 2, 3, [{ out: 2, back: 6 }]]]],
    ["shelf", [["guard", 1, undefined, [{ out: 2, back: 6 }]]]],
    [
      "tray 2",
      [
        ["pin", 1, undefined, [{ out: 3, back: 5 }]],
        ["shaft", 1, undefined, [{ out: 3, back: 5 }]],
      ],
    ],
    ["bag", [["old felt", 1, undefined, [{ out: 4, back: undefined }]]]],
  ]);
});

test("what is said more exactly of a place stands with the thing", () => {
  const details = new Map(
    labelsOfMill().flatMap(({ things }) => things.map(({ name, detail }) => [name, detail])),
  );
  expect(details.get("guard")).toBe("face up");
  expect(details.get("guard screws")).toBe("on a card");
  expect(details.get("shaft")).toBeUndefined();
});

const part = (id: string, keep: string | undefined): Part => ({
  ...{ id, name: id, count: 1, keep },
  heldBy: new Map(),
  covers: [],
  in: undefined,
  replaces: undefined,
  onlyWhile: new Map(),
});

/** Two parts that come off in steps 1 and 2; the first goes on in step 3, off again in step 4 and on in step 5. */
function twoParts(keeps: readonly [string | undefined, string | undefined]) {
  const machine = {
    parts: new Map([
      ["a", part("a", keeps[0])],
      ["b", part("b", keeps[1])],
    ]),
    fasteners: new Map<string, FastenerSet & { matched: boolean }>(),
    states: new Map(),
  };
  const trays = [[], ["a"], ["a", "b"], ["b"], ["a", "b"], ["b"]].map((parts) => ({
    parts: new Set(parts),
    sets: new Map(),
    states: new Map(),
  }));
  return labelsOf(machine, trays);
}

test("a thing that goes back and forth has all its stays on its label", () => {
  const [a, b] = twoParts(["tin 1", "tin 2"]);
  expect(a!.things[0]!.stays).toEqual([
    { out: 1, back: 3 },
    { out: 4, back: 5 },
  ]);
  expect(b!.things[0]!.stays).toEqual([{ out: 2, back: undefined }]);
});

test.each<[keeps: [string | undefined, string | undefined], places: (string | undefined)[]]>([
  [
    ["tray, place 1", "tray, place 2"],
    ["tray, place 1", "tray, place 2"],
  ],
  [["tray 2", "tray 2, on a card"], ["tray 2"]],
  [["box", "box"], ["box"]],
  [
    [undefined, undefined],
    [undefined, undefined],
  ],
])("kept at %j, the labels are for %j", (keeps, places) => {
  expect(twoParts(keeps).map(({ place }) => place)).toEqual(places);
});
