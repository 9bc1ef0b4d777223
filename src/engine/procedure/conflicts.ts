/** What a step reads of the tray and what it changes there: two steps that don't meet in either are free to change places. */
import type { Procedure } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { acts, type Touch, touchesOf } from "./touch.ts";

export interface Account {
  /** Keys "part …" and "set …". */
  readonly reads: ReadonlySet<string>;
  readonly writes: ReadonlySet<string>;
  /** The states that it needs and makes. */
  readonly states: readonly Touch[];
}

/**
 * The account of each step: all that `walk` looks at or changes when it does the step after those written before it. If no
 * two steps that change places conflict, every order walks as the written one does: each can be reached from it by letting
 * neighbours change places, once for each pair, and neighbours that do not conflict may.
 */
export function accountsOf(procedure: Procedure): Account[] {
  const relations = relationsOf(procedure);
  return touchesOf(procedure, relations).map((touches) => ({
    reads: new Set(touches.flatMap((touch) => readBy(touch, relations))),
    writes: new Set(touches.flatMap((touch) => writtenBy(touch, relations))),
    states: touches.filter(({ kind }) => kind === "needs" || kind === "makes"),
  }));
}

const parts = (ids: Iterable<string>): string[] => [...ids].map((id) => `part ${id}`);

function readBy(touch: Touch, relations: Relations): string[] {
  if (touch.kind === "through") return parts([touch.target]);
  if (!acts(touch)) return [];
  const part = relations.part(touch.target);
  const mayBeCovered = relations.coversOf(touch.target).length > 0;
  const place = mayBeCovered
    ? parts([...touch.under, ...touch.lies, ...(part === undefined ? [] : [part.id])])
    : [];
  if (part === undefined || touch.kind === "work") return place;
  const rivals = [...relations.machine.parts.keys()].filter((id) => relations.isReplacement(id, part.id));
  return [...place, ...parts(rivals), ...[...part.heldBy.keys()].map((id) => `set ${id}`)];
}

function writtenBy(touch: Touch, relations: Relations): string[] {
  if (!acts(touch) || touch.kind === "work") return [];
  return [relations.part(touch.target) === undefined ? `set ${touch.target}` : `part ${touch.target}`];
}

/** True where one of two steps changes what the other reads or changes; `a` is written before `b`. */
export function conflict(a: Account, b: Account): boolean {
  return (
    meets(a.writes, b.writes) ||
    meets(a.writes, b.reads) ||
    meets(a.reads, b.writes) ||
    a.states.some((one) => b.states.some((other) => statesConflict(one, other)))
  );
}

function meets(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  for (const key of a) if (b.has(key)) return true;
  return false;
}

/** A state that is brought to a value which the earlier step needs or makes as well may be brought to it before. */
function statesConflict(earlier: Touch, later: Touch): boolean {
  if (earlier.target !== later.target) return false;
  return later.kind === "makes" ? earlier.value !== later.value : earlier.kind === "makes";
}

/** The pairs that `maySwap` names and that must stay, because the tray comes out differently when they change places. */
export function swapsThatCannotBe(procedure: Procedure): { step: string; with: string }[] {
  const accounts = accountsOf(procedure);
  const places = new Map(procedure.steps.map((step, place) => [step.id, place]));
  return procedure.steps.flatMap((step, place) =>
    [...step.maySwap.keys()]
      .filter((other) => {
        const otherPlace = places.get(other);
        if (otherPlace === undefined) return false;
        const [first, then] = [Math.min(place, otherPlace), Math.max(place, otherPlace)];
        return conflict(accounts[first]!, accounts[then]!);
      })
      .map((other) => ({ step: step.id, with: other })),
  );
}
