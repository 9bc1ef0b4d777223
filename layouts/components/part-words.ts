import type { ModulePart } from "../../src/model/module.ts";

/** "rollers (2)": what a part is called, with how many pieces it is where it is more than one. */
export function partWords(
  id: string,
  { parts }: { readonly parts: ReadonlyMap<string, ModulePart> },
): string {
  const part = parts.get(id);
  if (part === undefined) return id;
  return part.count > 1 ? `${part.name} (${part.count})` : part.name;
}
