/** The tray as it is shown: compartments by where things are kept, what changed, what is slack. */
import { t } from "../words.ts";
import { piecesOf } from "./pieces.ts";
import type { FastenerSet, Machine } from "./procedure.ts";
import type { Tray } from "./tray.ts";

export interface Entry {
  /** Of the part or fastener set. */
  readonly id: string;
  readonly name: string;
  /** What the module says more exactly of where it is kept. */
  readonly detail: string | undefined;
  readonly count: number;
  /** What the step added (positive) or took back (negative). */
  readonly change: number;
  /** Of a fastener set of which each goes back into its own hole: how many numbered places it has. */
  readonly numbered: number | undefined;
}

export interface Compartment {
  readonly place: string;
  readonly entries: readonly Entry[];
}

export interface StateEntry {
  readonly name: string;
  readonly value: string;
  /** The value before the step, where the step changed it. */
  readonly was: string | undefined;
}

export interface TrayAccount {
  /** How many parts and fasteners are off the machine. */
  readonly total: number;
  readonly compartments: readonly Compartment[];
  readonly slack: readonly Entry[];
  readonly states: readonly StateEntry[];
}

/** A machine of which one knows too whose screws each go back into their own hole. */
export interface MatchedMachine extends Machine {
  readonly fasteners: ReadonlyMap<string, FastenerSet & { readonly matched: boolean }>;
}

/** Where a thing stands that the module names no place for. */
const unnamedPlace = t`off the machine`;
const toBeFitted = t`to be fitted`;

/**
 * The account after each tray but the first, which is the one to begin with. A thing stands in the same order in all of
 * them: that in which it first comes off. What a step takes back entirely is still listed there, with a count of 0.
 * O(trays · (parts + sets)).
 */
export function accountsOfTrays(machine: MatchedMachine, trays: readonly Tray[]): TrayAccount[] {
  const order = orderOff(machine, trays);
  return trays.slice(1).map((tray, index) => account(machine, order, trays[index]!, tray));
}

/** What is ever off the machine, in the order in which it first comes off. */
export function orderOff(machine: Machine, trays: readonly Tray[]): string[] {
  const order = new Set<string>();
  for (const tray of trays) {
    for (const id of machine.fasteners.keys()) if (outOf(id, machine, tray) > 0) order.add(id);
    for (const id of machine.parts.keys()) if (tray.parts.has(id)) order.add(id);
  }
  return [...order];
}

/** How many of a thing are off; of a part all its pieces, or 0. */
export function outOf(id: string, machine: Machine, tray: Tray): number {
  return tray.parts.has(id) ? piecesOf(id, machine) : (tray.sets.get(id)?.out ?? 0);
}

function account(machine: MatchedMachine, order: readonly string[], before: Tray, after: Tray): TrayAccount {
  const places = new Map<string, Entry[]>();
  let total = 0;
  for (const id of order) {
    const entry = entryOf(id, machine, outOf(id, machine, before), outOf(id, machine, after));
    total += entry.count;
    if (entry.count === 0 && entry.change === 0) continue;
    const { place } = keptAt(id, machine);
    places.set(place, [...(places.get(place) ?? []), entry]);
  }
  return {
    total,
    compartments: [...places].map(([place, entries]) => ({ place, entries })),
    slack: slackEntries(machine, before, after),
    states: [...machine.states.values()].map(({ id, name }) =>
      stateOf(name, before.states.get(id), after.states.get(id)),
    ),
  };
}

function entryOf(id: string, machine: MatchedMachine, before: number, after: number): Entry {
  const set = machine.fasteners.get(id);
  const name = machine.parts.get(id)?.name ?? set?.name ?? id;
  const numbered = set?.matched && set.count > 1 ? set.count : undefined;
  return { id, name, detail: keptAt(id, machine).detail, count: after, change: after - before, numbered };
}

/** "tray 2, on a card" is the compartment "tray 2" and the detail "on a card". */
export function keptAt(
  id: string,
  { parts, fasteners }: MatchedMachine,
): { place: string; detail: string | undefined } {
  const thing = parts.get(id) ?? fasteners.get(id);
  const unnamed = parts.get(id)?.replaces === undefined ? unnamedPlace : toBeFitted;
  const [, place, detail] = /^([^,;:]+)[,;:]\s*(.+)$/s.exec(thing?.keep ?? unnamed) ?? [];
  return { place: place ?? thing?.keep ?? unnamed, detail };
}

function slackEntries(machine: MatchedMachine, before: Tray, after: Tray): Entry[] {
  const slackOf = (id: string, tray: Tray) => tray.sets.get(id)?.slack ?? 0;
  return [...machine.fasteners.values()]
    .map(({ id, name }) => {
      const count = slackOf(id, after);
      return { id, name, detail: undefined, numbered: undefined, count, change: count - slackOf(id, before) };
    })
    .filter((entry) => entry.count > 0 || entry.change < 0);
}

function stateOf(name: string, before = "", after = ""): StateEntry {
  return { name, value: after, was: before === after ? undefined : before };
}
