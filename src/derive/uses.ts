/** Which modules and steps use a tool, a substance, or name a hazard. */
import type { Sheet } from "../model/sheet.ts";
import type { ModuleCard, SheetView, StepCard, Uses } from "../model/site.ts";

type Use = SheetView["usedBy"][number];

/** Gives the uses of a sheet, modules and steps in the order of the cards. One pass over all cards, however many sheets. */
export function usesIn(cards: readonly ModuleCard[]): (sheet: Sheet) => readonly Use[] {
  const uses = new Map<string, Map<string, { module: ModuleCard; steps: StepCard[] }>>();
  const useIn = (module: ModuleCard, sheet: string) => {
    const all = uses.get(sheet) ?? new Map<string, { module: ModuleCard; steps: StepCard[] }>();
    uses.set(sheet, all);
    const use = all.get(module.id) ?? { module, steps: [] };
    all.set(module.id, use);
    return use;
  };
  for (const module of cards) {
    for (const sheet of keysOf(module.uses)) useIn(module, sheet);
    for (const step of module.steps) {
      for (const sheet of keysOf(step.uses)) useIn(module, sheet).steps.push(step);
    }
  }
  return ({ kind, id }) => [...(uses.get(`${kind} ${id}`)?.values() ?? [])];
}

const keysOf = (uses: Uses): Set<string> =>
  new Set(Object.entries(uses).flatMap(([kind, ids]) => ids.map((id) => `${kind} ${id}`)));
