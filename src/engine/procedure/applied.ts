/** Where each substance of a procedure goes. */
import type { Step } from "./procedure.ts";

export type SupplyingStep = Pick<Step, "id" | "acts"> & { readonly substances: readonly string[] };

export interface Application {
  readonly step: string;
  /** Parts and fastener sets that the step works on; empty where it says none. */
  readonly on: readonly string[];
}

/** By substance, in the order in which they are first used; the uses of each in the written order. O(acts + uses). */
export function applications(steps: readonly SupplyingStep[]): Map<string, Application[]> {
  const uses = new Map<string, Application[]>();
  for (const { id, acts, substances } of steps) {
    const on = [...new Set(acts.filter(({ kind }) => kind === "work").map(({ target }) => target))];
    for (const substance of new Set(substances))
      uses.set(substance, [...(uses.get(substance) ?? []), { step: id, on }]);
  }
  return uses;
}
