/** What a procedure leaves alone. */
import type { Procedure } from "./procedure.ts";

/** Ids of the parts, then of the fastener sets, that no step does anything to. O(acts + things). */
export function untouched({ parts, fasteners, steps }: Procedure): string[] {
  const touched = new Set(steps.flatMap(({ acts }) => acts.map(({ target }) => target)));
  return [...parts.keys(), ...fasteners.keys()].filter((id) => !touched.has(id));
}
