/** What a step reads of the tray and what it changes there: two steps that don't meet in either are free to change places. */
import type { Act, Procedure, Step } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";

/** Keys are "part …", "set …" and "state …". */
export interface Account {
  readonly reads: ReadonlySet<string>;
  readonly writes: ReadonlySet<string>;
}

/**
 * The account of a step: all that `walk` may look at or change when it does the step, whatever the tray. If no two steps
 * that change places conflict, every order walks as the written one does (the steps are commuting operations on the tray).
 */
export function accountOf(step: Step, relations: Relations): Account {
  const reads = new Set<string>();
  const writes = new Set<string>();
  for (const cover of step.through) reads.add(`part ${cover}`);
  for (const state of step.while.keys()) reads.add(`state ${state}`);
  for (const state of step.makes.keys()) writes.add(`state ${state}`);
  for (const act of step.acts) {
    for (const key of readBy(act, relations)) reads.add(key);
    for (const key of writtenBy(act, relations)) writes.add(key);
  }
  return { reads, writes };
}

function readBy(act: Act, relations: Relations): string[] {
  const part = relations.part(act.target);
  const covers = relations.coversOf(act.target);
  const underAny = covers.length === 0 ? [] : [...covers, ...(part === undefined ? [] : [part.id]), ...relations.liesIn(act.target)];
  const keys = underAny.map((id) => `part ${id}`);
  if (part === undefined || act.kind === "work") return keys;
  const rivals = [...relations.procedure.parts.keys()].filter((id) => relations.isReplacement(id, part.id));
  return [
    ...keys,
    ...rivals.map((id) => `part ${id}`),
    ...[...part.heldBy.keys()].map((id) => `set ${id}`),
    ...[...part.onlyWhile.keys()].map((id) => `state ${id}`),
  ];
}

function writtenBy(act: Act, relations: Relations): string[] {
  if (act.kind === "work") return [];
  return [relations.part(act.target) === undefined ? `set ${act.target}` : `part ${act.target}`];
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
  const relations = relationsOf(procedure);
  const accounts = new Map(procedure.steps.map((step) => [step.id, accountOf(step, relations)]));
  return procedure.steps.flatMap((step) =>
    [...step.maySwap.keys()]
      .filter((other) => accounts.has(other) && conflict(accounts.get(step.id)!, accounts.get(other)!))
      .map((other) => ({ step: step.id, with: other })),
  );
}
