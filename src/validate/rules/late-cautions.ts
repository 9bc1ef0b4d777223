/** The hazards of a substance stand beside the first step that takes it, not beside a later one only. */
import type { Module, ModuleStep } from "../../model/module.ts";
import { inStep, moduleRule } from "./rule.ts";

export const lateCautions = moduleRule("late cautions", (module, content, reporter) => {
  for (const { use } of module.substances) {
    const hazards = content.substances.get(use)?.hazards ?? [];
    const [first, ...later] = usersOf(use, module);
    for (const hazard of hazards) {
      const named = later.find(({ hazards }) => hazards.includes(hazard));
      if (first === undefined || named === undefined || first.hazards.includes(hazard)) continue;
      reporter.report(
        "late-caution",
        inStep(content, module, first, ["substances", first.substances.indexOf(use)]),
        `"${use}" is first taken here, and its hazard "${hazard}" is named only at the later step "${named.id}"`,
        {
          ...inStep(content, module, named, ["hazards", named.hazards.indexOf(hazard)]),
          message: "its message comes here, when the substance has been used already",
        },
      );
    }
  }
});

const usersOf = (use: string, { procedure }: Module): ModuleStep[] =>
  procedure.steps.filter(({ substances }) => substances.includes(use));
