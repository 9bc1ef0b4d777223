/** What a step touches: its acts, the covers that it works through, the states that it needs or makes. */
import type { ActKind, Step } from "./procedure.ts";
import type { Relations } from "./relations.ts";

export interface Touch {
  readonly kind: ActKind | "through" | "needs" | "makes";
  /** A part, a fastener set or, for `needs` and `makes`, a state. */
  readonly target: string;
  /** The state's value. */
  readonly value: string;
  /** For `needs`: the part that may be removed or refitted only in that state; empty where the step itself needs it. */
  readonly part: string;
}

export function touchesOf(step: Step, relations: Relations): Touch[] {
  return [
    ...step.acts.map((act) => touch(act.kind, act.target)),
    ...step.through.map((cover) => touch("through", cover)),
    ...[...step.while].map(([state, value]) => touch("needs", state, value)),
    ...step.acts.filter(moves).flatMap((act) => {
      const needs = relations.part(act.target)?.onlyWhile ?? new Map<string, string>();
      return [...needs].map(([state, value]) => touch("needs", state, value, act.target));
    }),
    ...[...step.makes].map(([state, value]) => touch("makes", state, value)),
  ];
}

/** True for acts that take a thing off or put it back. */
export function moves(act: { readonly kind: Touch["kind"] }): boolean {
  return act.kind === "remove" || act.kind === "refit";
}

/** True for acts on a part or a set, as against states and covers worked through. */
export function acts(touch: Touch): boolean {
  return touch.kind !== "through" && touch.kind !== "needs" && touch.kind !== "makes";
}

function touch(kind: Touch["kind"], target: string, value = "", part = ""): Touch {
  return { kind, target, value, part };
}
