/** The tray of each step as it is printed: compartments by where things are kept, what changed, what is slack. */
import { startingTray, type Tray } from "../../src/engine/procedure/tray.ts";
import type { ModuleProcedure } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";

export interface Entry {
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

/** Where a thing stands that the module names no place for. */
const unnamedPlace = "off the machine";
const toBeFitted = "to be fitted";

/**
 * The printed account after each step, in the written order. A thing stands in the same order in all of them: that in
 * which it first comes off. What a step takes back entirely is still listed there, with a count of 0.
 */
export function trayAccounts(view: ModuleView): readonly TrayAccount[] {
  const accounts = known.get(view) ?? makeAccounts(view);
  known.set(view, accounts);
  return accounts;
}

/** The sheet and the bench view print the same. */
const known = new WeakMap<ModuleView, readonly TrayAccount[]>();

function makeAccounts(view: ModuleView): TrayAccount[] {
  const { procedure } = view.module;
  const trays = [startingTray(procedure), ...view.steps.map((step) => step.tray)];
  const order = orderOff(procedure, trays);
  return view.steps.map((_, index) => account(procedure, order, trays[index]!, trays[index + 1]!));
}

function orderOff(procedure: ModuleProcedure, trays: readonly Tray[]): string[] {
  const order = new Set<string>();
  for (const tray of trays) {
    for (const id of procedure.fasteners.keys()) if (outOf(id, tray) > 0) order.add(id);
    for (const id of procedure.parts.keys()) if (tray.parts.has(id)) order.add(id);
  }
  return [...order];
}

function outOf(id: string, tray: Tray): number {
  return tray.parts.has(id) ? 1 : (tray.sets.get(id)?.out ?? 0);
}

function account(
  procedure: ModuleProcedure,
  order: readonly string[],
  before: Tray,
  after: Tray,
): TrayAccount {
  const places = new Map<string, Entry[]>();
  let total = 0;
  for (const id of order) {
    const entry = entryOf(id, procedure, outOf(id, before), outOf(id, after));
    total += entry.count;
    if (entry.count === 0 && entry.change === 0) continue;
    const { place } = keptAt(id, procedure);
    places.set(place, [...(places.get(place) ?? []), entry]);
  }
  return {
    total,
    compartments: [...places].map(([place, entries]) => ({ place, entries })),
    slack: slackEntries(procedure, before, after),
    states: [...procedure.states.values()].map(({ id, name }) =>
      stateOf(name, before.states.get(id), after.states.get(id)),
    ),
  };
}

function entryOf(id: string, procedure: ModuleProcedure, before: number, after: number): Entry {
  const set = procedure.fasteners.get(id);
  const name = procedure.parts.get(id)?.name ?? set?.name ?? id;
  const numbered = set?.matched && set.count > 1 ? set.count : undefined;
  return { name, detail: keptAt(id, procedure).detail, count: after, change: after - before, numbered };
}

/** "tray 2, on a card" is the compartment "tray 2" and the detail "on a card". */
function keptAt(
  id: string,
  { parts, fasteners }: ModuleProcedure,
): { place: string; detail: string | undefined } {
  const thing = parts.get(id) ?? fasteners.get(id);
  const unnamed = parts.get(id)?.replaces === undefined ? unnamedPlace : toBeFitted;
  const [, place, detail] = /^([^,;:]+)[,;:]\s*(.+)$/s.exec(thing?.keep ?? unnamed) ?? [];
  return { place: place ?? thing?.keep ?? unnamed, detail };
}

function slackEntries(procedure: ModuleProcedure, before: Tray, after: Tray): Entry[] {
  const slackOf = (id: string, tray: Tray) => tray.sets.get(id)?.slack ?? 0;
  return [...procedure.fasteners.values()]
    .map(({ id, name }) => {
      const count = slackOf(id, after);
      return { name, detail: undefined, numbered: undefined, count, change: count - slackOf(id, before) };
    })
    .filter((entry) => entry.count > 0 || entry.change < 0);
}

function stateOf(name: string, before = "", after = ""): StateEntry {
  return { name, value: after, was: before === after ? undefined : before };
}
