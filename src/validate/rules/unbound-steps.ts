/** A step that is bound to no other: likely an act, a state or an `after` is missing. */
import { freeSteps } from "../../engine/procedure/free-steps.ts";
import { adviceRule } from "./advice.ts";
import { inStep } from "./rule.ts";

export const unboundSteps = adviceRule("unbound steps", (module, graph, content, reporter) => {
  const { steps } = module.procedure;
  if (steps.length < 2) return;
  const free = new Set(freeSteps(graph));
  for (const step of steps) {
    if (!free.has(step.id)) continue;
    const found = `nothing has to come before "${step.id}", nor after it: it may be done first, last or anywhere among the ${steps.length} steps`;
    reporter.report("unbound-step", inStep(content, module, step, ["id"]), found);
  }
});
