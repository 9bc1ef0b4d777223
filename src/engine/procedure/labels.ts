/** What the labels in the tins say: what goes into each place, how many, and between which steps it lies there. */

import type { Tray } from "./tray.ts";
import { keptAt, type MatchedMachine, orderOff, outOf } from "./tray-account.ts";

/** One stay of a thing in its place. Steps count from 1. */
export interface Stay {
  /** The step that brings it there; undefined where it lies there at the beginning. */
  readonly out: number | undefined;
  /** The step that takes the last of it away; undefined where it stays off. */
  readonly back: number | undefined;
}

export interface LabelledThing {
  /** Of a part or fastener set. */
  readonly id: string;
  readonly name: string;
  /** What the module says more exactly of where it is kept. */
  readonly detail: string | undefined;
  /** The most that ever lie there at once. */
  readonly count: number;
  /** Of a set each of which goes back into its own hole: how many numbered places it wants. */
  readonly numbered: number | undefined;
  readonly stays: readonly Stay[];
}

export interface Label {
  /** Undefined where the module names no place for the one thing on it. */
  readonly place: string | undefined;
  readonly things: readonly LabelledThing[];
}

/**
 * A label for each place, in the order in which the places fill. `trays` begins with the tray before the first step. Where all
 * that is kept at one place is kept there "at" something different (tray, place 1; tray, place 2), each has a label of its own.
 * O(trays · things).
 */
export function labelsOf(machine: MatchedMachine, trays: readonly Tray[]): Label[] {
  const labels = new Map<string, Label>();
  for (const id of orderOff(machine, trays)) {
    const thing = labelledThing(id, machine, trays);
    const place = placeNamed(id, machine);
    const key = place ?? `\n${id}`;
    labels.set(key, { place, things: [...(labels.get(key)?.things ?? []), thing] });
  }
  return [...labels.values()].flatMap(ownPlaces);
}

/** Undefined for a part of the machine without a named place; what waits to be fitted has one of its own. */
function placeNamed(id: string, machine: MatchedMachine): string | undefined {
  const part = machine.parts.get(id);
  const thing = part ?? machine.fasteners.get(id);
  const hasPlace = thing?.keep !== undefined || part?.replaces !== undefined;
  return hasPlace ? keptAt(id, machine).place : undefined;
}

function labelledThing(id: string, machine: MatchedMachine, trays: readonly Tray[]): LabelledThing {
  const set = machine.fasteners.get(id);
  const counts = trays.map((tray) => outOf(id, machine, tray));
  return {
    id,
    name: machine.parts.get(id)?.name ?? set?.name ?? id,
    detail: keptAt(id, machine).detail,
    count: Math.max(...counts),
    numbered: set?.matched && set.count > 1 ? set.count : undefined,
    stays: staysOf(counts),
  };
}

/** From `counts` before the first step and after each. */
function staysOf(counts: readonly number[]): Stay[] {
  const stays: Stay[] = counts[0]! > 0 ? [{ out: undefined, back: undefined }] : [];
  for (let step = 1; step < counts.length; step++) {
    const [before, after] = [counts[step - 1]!, counts[step]!];
    if (before === 0 && after > 0) stays.push({ out: step, back: undefined });
    if (before > 0 && after === 0) stays.push({ ...stays.pop()!, back: step });
  }
  return stays;
}

/** Cuts a label where the details of its things are places. */
function ownPlaces(label: Label): Label[] {
  const { place, things } = label;
  const details = new Set(things.map(({ detail }) => detail));
  const differ = things.length > 1 && !details.has(undefined) && details.size === things.length;
  if (place === undefined || !differ) return [label];
  return things.map((thing) => ({
    place: `${place}, ${thing.detail}`,
    things: [{ ...thing, detail: undefined }],
  }));
}
