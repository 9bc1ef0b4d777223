/** Walks the steps in an order, keeps the tray and finds what can't be done. */

import { fastenerActs } from "./fastener-acts.ts";
import type { Fault } from "./fault.ts";
import { placeOfAct } from "./place.ts";
import type { Act, ActKind, Hold, Machine, Part, Procedure, Work } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { type Counts, startingTray, type Tray } from "./tray.ts";

export interface Walk {
  /** The tray after each step, in the order walked. */
  readonly trays: readonly Tray[];
  readonly faults: readonly Fault[];
}

/**
 * Walks the steps in `order` (the written order where none is given). A fault does not end the walk: the act is done as
 * far as it can be, so that later faults are found too. O(acts · covers) time.
 */
export function walk(procedure: Procedure, order: readonly Work[] = procedure.steps): Walk {
  const walker = startWalk(procedure);
  const trays = order.map((step) => {
    walker.do(step);
    return walker.tray();
  });
  return { trays, faults: [...walker.faults, ...faultsAtEnd(procedure, walker.tray())] };
}

/** A walk under way, a step at a time. */
export interface Walker {
  readonly faults: Fault[];
  do(step: Work): void;
  tray(): Tray;
}

/** Begins a walk at the starting tray. */
export function startWalk(machine: Machine): Walker {
  const start = startingTray(machine);
  const bench: Bench = {
    relations: relationsOf(machine),
    off: new Set(start.parts),
    sets: new Map(start.sets),
    states: new Map(start.states),
    faults: [],
  };
  return {
    faults: bench.faults,
    do: (step) => doStep(step, bench),
    tray: () => ({ parts: new Set(bench.off), sets: new Map(bench.sets), states: new Map(bench.states) }),
  };
}

interface Bench {
  readonly relations: Relations;
  readonly off: Set<string>;
  readonly sets: Map<string, Counts>;
  readonly states: Map<string, string>;
  readonly faults: Fault[];
}

function doStep(step: Work, bench: Bench): void {
  for (const cover of step.through) {
    if (bench.off.has(cover)) bench.faults.push({ step: step.id, kind: "cover-off", cover });
  }
  for (const [state, needed] of step.while) needState(step, state, needed, "", bench);
  for (const act of step.acts) {
    findCover(step, act, bench);
    const part = bench.relations.part(act.target);
    if (part === undefined) doFasteners(step, act, bench);
    else partActs[act.kind]?.(step, part, bench);
  }
  for (const [state, value] of step.makes) bench.states.set(state, value);
}

function needState(step: Work, state: string, needed: string, part: string, bench: Bench): void {
  const value = bench.states.get(state) ?? "";
  if (value !== needed) bench.faults.push({ step: step.id, kind: "wrong-state", state, value, needed, part });
}

function findCover(step: Work, act: Act, { relations, off, faults }: Bench): void {
  for (const cover of placeOfAct(act.kind, act.target, relations, off).under) {
    if (step.through.includes(cover) || off.has(cover)) continue;
    faults.push({ step: step.id, kind: "cover-on", cover, act: act.kind, target: act.target });
  }
}

const partActs: Partial<Record<ActKind, (step: Work, part: Part, bench: Bench) => void>> = {
  remove(step, part, bench) {
    if (bench.off.has(part.id)) bench.faults.push({ step: step.id, kind: "part-off", part: part.id });
    findHolds(step, part, "still-held", bench);
    for (const [state, needed] of part.onlyWhile) needState(step, state, needed, part.id, bench);
    bench.off.add(part.id);
  },
  refit(step, part, bench) {
    if (!bench.off.has(part.id)) bench.faults.push({ step: step.id, kind: "part-on", part: part.id });
    const rival = findRival(part, bench);
    if (rival !== undefined)
      bench.faults.push({ step: step.id, kind: "place-taken", part: part.id, by: rival });
    findHolds(step, part, "in-the-way", bench);
    for (const [state, needed] of part.onlyWhile) needState(step, state, needed, part.id, bench);
    bench.off.delete(part.id);
  },
};

function findRival(part: Part, { relations, off }: Bench): string | undefined {
  for (const id of relations.machine.parts.keys())
    if (relations.isReplacement(part.id, id) && !off.has(id)) return id;
  return undefined;
}

function findHolds(step: Work, part: Part, kind: "still-held" | "in-the-way", bench: Bench): void {
  for (const [set, hold] of part.heldBy) {
    const counts = bench.sets.get(set);
    if (counts === undefined || isFree(counts, hold)) continue;
    bench.faults.push({ step: step.id, kind, part: part.id, set, tight: counts.tight, slack: counts.slack });
  }
}

const isFree = (counts: Counts, hold: Hold): boolean =>
  counts.out >= hold.out && counts.out + counts.slack >= hold.out + hold.slack;

function doFasteners(step: Work, act: Act, bench: Bench): void {
  const counts = bench.sets.get(act.target);
  if (act.kind === "work" || counts === undefined) return;
  const rule = fastenerActs[act.kind];
  const there = rule.there(counts);
  const wanted = act.count ?? there;
  if (wanted > there || there === 0) {
    bench.faults.push({
      step: step.id,
      kind: "too-many",
      act: act.kind,
      set: act.target,
      wanted: act.count ?? counts.tight + counts.slack + counts.out,
      there,
    });
  }
  bench.sets.set(act.target, rule.done(counts, Math.min(wanted, there)));
}

/** What is off, slack or in another state at the end although the procedure does not say that it is left so. */
export function faultsAtEnd(procedure: Procedure, tray: Tray): Fault[] {
  return [...partsLeft(procedure, tray), ...setsLeft(procedure, tray), ...statesLeft(procedure, tray)];
}

function partsLeft(procedure: Procedure, tray: Tray): Fault[] {
  const replaced = new Set(
    [...procedure.parts.values()].filter((p) => !tray.parts.has(p.id)).map((p) => p.replaces),
  );
  return [...procedure.parts.keys()].flatMap((part): Fault[] => {
    const isOff = tray.parts.has(part);
    if (procedure.leaves.has(part)) return isOff ? [] : [{ step: undefined, kind: "ends-on", part }];
    return isOff && !replaced.has(part) && !isSpare(procedure, part, tray)
      ? [{ step: undefined, kind: "ends-off", part }]
      : [];
  });
}

/** A new part that was never fitted, the old one still being in its place. */
function isSpare(procedure: Procedure, id: string, tray: Tray): boolean {
  const old = procedure.parts.get(id)?.replaces;
  return old !== undefined && !tray.parts.has(old);
}

function setsLeft(procedure: Procedure, tray: Tray): Fault[] {
  return [...tray.sets].flatMap(([set, { out, slack }]) => {
    const left = procedure.leaves.get(set) ?? { out: 0, slack: 0 };
    return out === left.out && slack === left.slack
      ? []
      : [{ step: undefined, kind: "ends-out" as const, set, out, slack }];
  });
}

function statesLeft(procedure: Procedure, tray: Tray): Fault[] {
  return [...procedure.states.values()].flatMap((state) => {
    const value = tray.states.get(state.id) ?? "";
    return value === state.ends
      ? []
      : [{ step: undefined, kind: "ends-state" as const, state: state.id, value, needed: state.ends }];
  });
}
