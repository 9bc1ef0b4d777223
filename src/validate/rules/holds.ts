import type { ModuleProcedure } from "../../model/module.ts";

/** Of each part the fastener sets that hold it, of each set the parts that it holds. */
export function linksOf({ parts }: Pick<ModuleProcedure, "parts">): ReadonlyMap<string, readonly string[]> {
  const links = new Map<string, string[]>();
  const add = (from: string, to: string) => links.set(from, [...(links.get(from) ?? []), to]);
  for (const part of parts.values()) {
    for (const set of part.heldBy.keys()) {
      add(part.id, set);
      add(set, part.id);
    }
  }
  return links;
}
