/** Which modules and steps use a tool, a substance, or name a hazard. */
import type { Sheet } from "../model/sheet.ts";
import type { ModuleCard, SheetView } from "../model/site.ts";

export function usesOf({ kind, id }: Sheet, cards: readonly ModuleCard[]): SheetView["usedBy"] {
  return cards.flatMap((module) => {
    const steps = module.steps.filter(({ uses }) => uses[kind].includes(id));
    return steps.length > 0 || module.uses[kind].includes(id) ? [{ module, steps }] : [];
  });
}
