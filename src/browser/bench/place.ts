/** Where one is at the bench, as it is kept in the browser. */
import { fieldsOf } from "../page/store.ts";
import { readTimers, type Timer } from "./waits/timers.ts";

export interface Place {
  /** The id of the card. */
  readonly card: string;
  /** Ids of the steps that were ticked off. */
  readonly done: ReadonlySet<string>;
  /** Ids of the steps whose check was ticked. */
  readonly checked: ReadonlySet<string>;
  readonly timers: readonly Timer[];
}

/** Nothing is ticked, nothing runs. */
export const beginning = (card: string): Place => ({
  card,
  done: new Set(),
  checked: new Set(),
  timers: [],
});

export function readPlace(kept: unknown, first: string): Place {
  const { card, done, checked, timers } = fieldsOf(kept);
  return {
    card: typeof card === "string" ? card : first,
    done: readIds(done),
    checked: readIds(checked),
    timers: readTimers(timers),
  };
}

const readIds = (kept: unknown): ReadonlySet<string> =>
  new Set(Array.isArray(kept) ? kept.filter((id) => typeof id === "string") : []);

export function keepPlace({ card, done, checked, timers }: Place): unknown {
  return { card, done: [...done], checked: [...checked], timers };
}

/** With one in it or not. */
export function withId(ids: ReadonlySet<string>, id: string, isIn: boolean): ReadonlySet<string> {
  const changed = new Set(ids);
  if (isIn) changed.add(id);
  else changed.delete(id);
  return changed;
}
