import fc from "fast-check";
import { expect, test } from "vitest";
import { packProcedure, unpackProcedure } from "../../../src/engine/procedure/packed.ts";
import { startingTray } from "../../../src/engine/procedure/tray.ts";
import { accountsOfTrays } from "../../../src/engine/procedure/tray-account.ts";
import { startWalk, walk } from "../../../src/engine/procedure/walk.ts";
import { soundProcedure } from "./random-procedure.ts";

/** As a page hands it to its script. */
const carried = soundProcedure.map((procedure) => {
  const fasteners = new Map(
    [...procedure.fasteners].map(([id, set]) => [id, { ...set, matched: set.count > 2 }]),
  );
  const whole = { ...procedure, fasteners };
  return { whole, unpacked: unpackProcedure(JSON.parse(JSON.stringify(packProcedure(whole)))) };
});

test("what was packed walks as the procedure does, forwards and in an order full of faults", () => {
  let faults = 0;
  fc.assert(
    fc.property(carried, ({ whole, unpacked }) => {
      for (const turn of [<T>(list: readonly T[]) => list, <T>(list: readonly T[]) => list.toReversed()]) {
        const walker = startWalk(unpacked);
        for (const step of turn(unpacked.steps)) walker.do(step);
        const { trays, faults: expected } = walk(whole, turn(whole.steps));
        expect(walker.tray()).toEqual(trays.at(-1) ?? startingTray(whole));
        expect(walker.faults).toEqual(expected.filter(({ step }) => step !== undefined));
        faults += walker.faults.length;
      }
    }),
    { numRuns: 300 },
  );
  expect(faults).toBeGreaterThan(300);
});

test("its trays read alike, and their entries add up to the total", () => {
  fc.assert(
    fc.property(carried, ({ whole, unpacked }) => {
      const trays = [startingTray(whole), ...walk(whole).trays];
      const accounts = accountsOfTrays(whole, trays);
      expect(accountsOfTrays(unpacked, trays)).toEqual(accounts);
      expect(accounts).toHaveLength(whole.steps.length);
      for (const [index, { total, compartments }] of accounts.entries()) {
        const { parts, sets } = trays[index + 1]!;
        const out = [...sets.values()].reduce((sum, set) => sum + set.out, parts.size);
        const counted = compartments
          .flatMap(({ entries }) => entries)
          .reduce((sum, { count }) => sum + count, 0);
        expect([total, counted]).toEqual([out, out]);
      }
    }),
    { numRuns: 300 },
  );
});
