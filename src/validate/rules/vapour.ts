/** What can burn: its hazard is named where it is taken, and its vapour is gone before heat, sparks or closing up. */
import { type VapourFault, vapourFaults } from "../../engine/procedure/vapour.ts";
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { Reporter } from "../reporter.ts";
import { calledIn } from "./called.ts";
import { inStep, moduleRule } from "./rule.ts";
import { treatmentsIn } from "./treatments.ts";

export const vapour = moduleRule("vapour", (module, content, reporter) => {
  const { steps } = module.procedure;
  for (const step of steps) checkHazards(step, module, content, reporter);
  for (const fault of vapourFaults(module.procedure, steps, treatmentsIn(content)))
    reportFault(fault, module, content, reporter);
});

/** The first hazard that the sheet of a flammable substance names is that of fire. */
function checkHazards(step: ModuleStep, module: Module, content: Content, reporter: Reporter): void {
  for (const [index, id] of step.substances.entries()) {
    const substance = content.substances.get(id);
    const [fire] = substance?.hazards ?? [];
    if (substance?.flammable !== true || (fire !== undefined && step.hazards.includes(fire))) continue;
    const lacks =
      fire === undefined ? "its sheet names no hazard" : `this step does not name its hazard "${fire}"`;
    reporter.report(
      "fire-unnamed",
      inStep(content, module, step, ["substances", index]),
      `"${id}" can burn, and ${lacks}`,
    );
  }
}

function reportFault(fault: VapourFault, module: Module, content: Content, reporter: Reporter): void {
  const { steps } = module.procedure;
  const find = (wanted: string): ModuleStep => steps.find(({ id }) => id === wanted)!;
  const { name, agree } = calledIn(module);
  const step = find(fault.step);
  const wetted = {
    ...inStep(content, module, find(fault.since), ["substances"]),
    message: "what can burn is taken here",
  };
  if (fault.kind === "hot") {
    const found =
      fault.since === fault.step
        ? "this is hot work, and it takes what can burn"
        : `this is hot work, and nothing has dried what "${fault.since}" wetted with what can burn`;
    reporter.report("hot-work-vapour", inStep(content, module, step, ["hot-work"]), found, wetted);
  } else {
    const found = `${name(fault.cover)} ${agree(fault.cover, "goes", "go")} back over ${name(fault.target)}, wet with what can burn since "${fault.since}"`;
    reporter.report("vapour-shut-in", inStep(content, module, step, ["refit"], "key"), found, wetted);
  }
}
