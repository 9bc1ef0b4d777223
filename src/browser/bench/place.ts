/** Where one is at the bench, as it is kept in the browser. */
import { fieldsOf } from "../page/store.ts";

export interface Place {
  /** The id of the card. */
  readonly card: string;
  /** Ids of the steps that were ticked off. */
  readonly done: ReadonlySet<string>;
}

export function readPlace(kept: unknown, first: string): Place {
  const { card, done } = fieldsOf(kept);
  return {
    card: typeof card === "string" ? card : first,
    done: new Set(Array.isArray(done) ? done.filter((id) => typeof id === "string") : []),
  };
}

export function keepPlace({ card, done }: Place): unknown {
  return { card, done: [...done] };
}
