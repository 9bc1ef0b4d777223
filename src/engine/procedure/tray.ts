/** The tray: the account of what is off the machine, what is slack and which state holds. */
import type { Machine } from "./procedure.ts";

/** Of one fastener set: tight + slack + out = its count. */
export interface Counts {
  readonly tight: number;
  readonly slack: number;
  readonly out: number;
}

export interface Tray {
  /** Parts that are off the machine, in the order in which they came off. */
  readonly parts: ReadonlySet<string>;
  readonly sets: ReadonlyMap<string, Counts>;
  readonly states: ReadonlyMap<string, string>;
}

/** The tray before the first step: every part on but those that take another's place, every screw tight. */
export function startingTray(machine: Machine): Tray {
  const parts = [...machine.parts.values()];
  return {
    parts: new Set(parts.filter((part) => part.replaces !== undefined).map((part) => part.id)),
    sets: new Map(
      [...machine.fasteners.values()].map((set) => [set.id, { tight: set.count, slack: 0, out: 0 }]),
    ),
    states: new Map([...machine.states.values()].map((state) => [state.id, state.starts])),
  };
}
