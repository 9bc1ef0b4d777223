/** What lies in what, what holds what and what covers what, looked up once. */
import { t } from "../words.ts";
import { piecesOf } from "./pieces.ts";
import type { Machine, Part } from "./procedure.ts";

export interface Relations {
  readonly machine: Machine;
  part(id: string): Part | undefined;
  /** The name of a part or fastener set with its article: "the motor board". */
  the(id: string): string;
  /** True where the name wants a plural verb: two or more screws or pieces. */
  isPlural(id: string): boolean;
  /** The part and the assemblies that it lies in, inmost first. */
  chain(part: string): readonly string[];
  /** The sets that hold a part. */
  holds(set: string, part: string): boolean;
  /** The parts that a set holds. */
  heldBy(set: string): readonly string[];
  /** The covers that hide a part or set while they and it are on. */
  coversOf(id: string): readonly string[];
  /** The parts and fastener sets that a cover hides directly. */
  coveredBy(cover: string): ReadonlySet<string>;
  /** The part that takes this one's place, or whose place it takes. */
  isReplacement(a: string, b: string): boolean;
}

/**
 * A part that replaces another lies, is held and covers as the other one did, unless it says otherwise itself; and what
 * covered the old part covers the new one.
 */
export function withReplacements(parts: ReadonlyMap<string, Part>): Map<string, Part> {
  const inherited = new Map<string, Part>();
  for (const part of parts.values()) inherited.set(part.id, inherit(part, parts));
  for (const part of inherited.values()) {
    const covers = new Set(part.covers);
    for (const other of inherited.values())
      if (other.replaces !== undefined && covers.has(other.replaces)) covers.add(other.id);
    if (covers.size > part.covers.length) inherited.set(part.id, { ...part, covers: [...covers] });
  }
  return inherited;
}

function inherit(part: Part, parts: ReadonlyMap<string, Part>): Part {
  const old = part.replaces === undefined ? undefined : parts.get(part.replaces);
  if (old === undefined) return part;
  return {
    ...part,
    in: part.in ?? old.in,
    heldBy: part.heldBy.size > 0 ? part.heldBy : old.heldBy,
    covers: part.covers.length > 0 ? part.covers : old.covers,
    onlyWhile: part.onlyWhile.size > 0 ? part.onlyWhile : old.onlyWhile,
  };
}

/** Looks the relations of parts and fastener sets up. O(parts²) time and memory at worst. */
export function relationsOf(machine: Machine): Relations {
  const parts = withReplacements(machine.parts);
  const chains = new Map([...parts.keys()].map((id) => [id, chainOf(id, parts)]));
  const chain = (id: string): readonly string[] => chains.get(id) ?? [];
  const held = heldParts(parts);
  const heldBy = (set: string): readonly string[] => held.get(set) ?? [];
  const places = placesOf(machine, chain, heldBy);
  const hidden = new Map([...parts.values()].map((part) => [part.id, hiddenBy(part, parts, chain, places)]));
  const covers = invert(hidden);
  return {
    machine,
    part: (id) => parts.get(id),
    the: (id) => t`the ${machine.parts.get(id)?.name ?? machine.fasteners.get(id)?.name ?? id}`,
    isPlural: (id) => piecesOf(id, machine) > 1,
    chain,
    holds: (set, part) => parts.get(part)?.heldBy.has(set) ?? false,
    heldBy,
    coversOf: (id) => covers.get(id) ?? [],
    coveredBy: (cover) => new Set(parts.get(cover)?.covers),
    isReplacement: (a, b) => parts.get(a)?.replaces === b || parts.get(b)?.replaces === a,
  };
}

function chainOf(id: string, parts: ReadonlyMap<string, Part>): string[] {
  const chain: string[] = [];
  const seen = new Set<string>();
  for (let at: string | undefined = id; at !== undefined && !seen.has(at); at = parts.get(at)?.in) {
    seen.add(at);
    chain.push(at);
  }
  return chain;
}

function heldParts(parts: ReadonlyMap<string, Part>): Map<string, string[]> {
  return invert(new Map([...parts.values()].map((part) => [part.id, new Set(part.heldBy.keys())])));
}

/** A set lies where the parts lie that it holds; those parts count as its place too. */
function placesOf(
  machine: Machine,
  chain: (id: string) => readonly string[],
  heldBy: (set: string) => readonly string[],
): Map<string, Set<string>> {
  const places = new Map<string, Set<string>>();
  for (const id of machine.parts.keys()) places.set(id, new Set(chain(id).slice(1)));
  for (const id of machine.fasteners.keys())
    places.set(id, new Set(heldBy(id).flatMap((part) => chain(part))));
  return places;
}

/** A cover hides what it covers, what lies in that and the sets holding either; never itself, its own fasteners or its assemblies. */
function hiddenBy(
  cover: Part,
  parts: ReadonlyMap<string, Part>,
  chain: (id: string) => readonly string[],
  places: ReadonlyMap<string, ReadonlySet<string>>,
): Set<string> {
  const hidden = new Set<string>();
  if (cover.covers.length === 0) return hidden;
  for (const [id, place] of places) {
    if (cover.covers.some((covered) => covered === id || place.has(covered))) hidden.add(id);
  }
  for (const id of [...chain(cover.id), ...cover.heldBy.keys()]) hidden.delete(id);
  for (const part of parts.values())
    if (part.replaces === cover.id || cover.replaces === part.id) hidden.delete(part.id);
  return hidden;
}

function invert(of: ReadonlyMap<string, ReadonlySet<string>>): Map<string, string[]> {
  const inverse = new Map<string, string[]>();
  for (const [from, tos] of of) {
    for (const to of tos) {
      const list = inverse.get(to);
      if (list === undefined) inverse.set(to, [from]);
      else list.push(from);
    }
  }
  return inverse;
}
