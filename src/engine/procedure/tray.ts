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

/**
 * The tray before the first step: every part on but those that take another's place, every screw tight; or what another
 * procedure has left off and slack, as far as this one knows the things.
 */
export function startingTray({ parts, fasteners, states, begins }: Machine): Tray {
  const off = (begins?.parts ?? []).filter((part) => parts.has(part));
  const spare = [...parts.values()].filter((part) => part.replaces !== undefined).map((part) => part.id);
  const loose = new Map(begins?.sets);
  return {
    parts: new Set([...off, ...spare]),
    sets: new Map([...fasteners.values()].map(({ id, count }) => [id, countsOf(count, loose.get(id))])),
    states: new Map([...states.values()].map((state) => [state.id, state.starts])),
  };
}

/** No more are out or slack than there are. */
function countsOf(count: number, loose = { out: 0, slack: 0 }): Counts {
  const out = Math.min(loose.out, count);
  const slack = Math.min(loose.slack, count - out);
  return { tight: count - out - slack, slack, out };
}
