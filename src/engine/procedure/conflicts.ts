/** What a step reads of the tray and what it changes there: two steps that don't meet in either are free to change places. */
import type { Procedure } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { acts, type Touch, touchesOf } from "./touch.ts";

/** Keys are "part …", "set …" and "state …". */
export interface Account {
  readonly reads: ReadonlySet<string>;
  readonly writes: ReadonlySet<string>;
}

/**
 * The account of each step: all that `walk` looks at or changes when it does the step after those written before it. If no
 * two steps that change places conflict, every order walks as the written one does (the steps are commuting operations).
 */
export function accountsOf(procedure: Procedure): Account[] {
  const relations = relationsOf(procedure);
  return touchesOf(procedure, relations).map((touches) => ({
    reads: new Set(touches.flatMap((touch) => readBy(touch, relations))),
    writes: new Set(touches.flatMap((touch) => writtenBy(touch, relations))),
  }));
}

const parts = (ids: Iterable<string>): string[] => [...ids].map((id) => `part ${id}`);

function readBy(touch: Touch, relations: Relations): string[] {
  if (touch.kind === "through") return parts([touch.target]);
  if (touch.kind === "needs") return [`state ${touch.target}`];
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
  if (touch.kind === "makes") return [`state ${touch.target}`];
  if (!acts(touch) || touch.kind === "work") return [];
  return [relations.part(touch.target) === undefined ? `set ${touch.target}` : `part ${touch.target}`];
}

/** True where one of two steps changes what the other reads or changes. */
export function conflict(a: Account, b: Account): boolean {
  return meets(a.writes, b.writes) || meets(a.writes, b.reads) || meets(a.reads, b.writes);
}

function meets(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  for (const key of a) if (b.has(key)) return true;
  return false;
}

/** The pairs that `maySwap` names and that must stay, because the tray comes out differently when they change places. */
export function swapsThatCannotBe(procedure: Procedure): { step: string; with: string }[] {
  const accounts = accountsOf(procedure);
  const places = new Map(procedure.steps.map((step, place) => [step.id, place]));
  return procedure.steps.flatMap((step, place) =>
    [...step.maySwap.keys()]
      .filter((other) => places.has(other) && conflict(accounts[place]!, accounts[places.get(other)!]!))
      .map((other) => ({ step: step.id, with: other })),
  );
}
