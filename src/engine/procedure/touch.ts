/** What the steps touch: their acts, the covers that they work through, the states that they need or make. */
import { type Place, placeOfAct } from "./place.ts";
import type { Act, ActKind, Procedure, Step } from "./procedure.ts";
import type { Relations } from "./relations.ts";
import { startingTray } from "./tray.ts";

export interface Touch extends Place {
  readonly kind: ActKind | "through" | "needs" | "makes";
  /** A part, a fastener set or, for `needs` and `makes`, a state. */
  readonly target: string;
  /** The state's value. */
  readonly value: string;
  /** For `needs`: the part that may be removed or refitted only in that state; empty where the step itself needs it. */
  readonly part: string;
}

/** The touches of every step, each with the place where its thing then is, as the steps are written. */
export function touchesOf(procedure: Procedure, relations: Relations): Touch[][] {
  const off = new Set(startingTray(procedure).parts);
  return procedure.steps.map((step) => touchesOfStep(step, relations, off));
}

function touchesOfStep(step: Step, relations: Relations, off: Set<string>): Touch[] {
  return [
    ...step.acts.map((act) => touchOfAct(act, relations, off)),
    ...step.through.map((cover) => touch("through", cover)),
    ...[...step.while].map(([state, value]) => touch("needs", state, value)),
    ...step.acts.filter(moves).flatMap((act) => {
      const needs = relations.part(act.target)?.onlyWhile ?? new Map<string, string>();
      return [...needs].map(([state, value]) => touch("needs", state, value, act.target));
    }),
    ...[...step.makes].map(([state, value]) => touch("makes", state, value)),
  ];
}

/** Takes the part off or puts it on, so that the next act finds it there. */
function touchOfAct({ kind, target }: Act, relations: Relations, off: Set<string>): Touch {
  const place = placeOfAct(kind, target, relations, off);
  if (relations.part(target) !== undefined && kind === "remove") off.add(target);
  if (kind === "refit") off.delete(target);
  return { ...touch(kind, target), ...place };
}

/** True for acts that take a thing off or put it back. */
export function moves(act: { readonly kind: Touch["kind"] }): boolean {
  return act.kind === "remove" || act.kind === "refit";
}

/** True for acts on a part or a set, as against states and covers worked through. */
export function acts(touch: Touch): boolean {
  return touch.kind !== "through" && touch.kind !== "needs" && touch.kind !== "makes";
}

const nowhere: ReadonlySet<string> = new Set();

function touch(kind: Touch["kind"], target: string, value = "", part = ""): Touch {
  return { kind, target, value, part, lies: nowhere, under: nowhere };
}
