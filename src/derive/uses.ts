/** Which modules and steps use a tool, a substance, or name a hazard. */
import type { Content } from "../model/content.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import type { Sheet } from "../model/sheet.ts";
import type { SheetView } from "../model/site.ts";

const lists: Readonly<
  Record<
    Sheet["kind"],
    { ofModule(module: Module): readonly string[]; ofStep(step: ModuleStep): readonly string[] }
  >
> = {
  tool: { ofModule: (module) => module.tools, ofStep: (step) => step.tools },
  substance: {
    ofModule: (module) => module.substances.map(({ use }) => use),
    ofStep: (step) => step.substances,
  },
  hazard: { ofModule: (module) => module.hazards, ofStep: (step) => step.hazards },
};

export function usesOf(sheet: Sheet, content: Content): SheetView["usedBy"] {
  const { ofModule, ofStep } = lists[sheet.kind];
  return [...content.modules.values()].flatMap((module) => {
    const steps = module.procedure.steps.filter((step) => ofStep(step).includes(sheet.id));
    return steps.length > 0 || ofModule(module).includes(sheet.id) ? [{ module, steps }] : [];
  });
}
