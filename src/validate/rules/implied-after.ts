/** An `after` that other pairs imply already: the operation sheet and the drawing show those, and not its reason. */
import { impliedAfters } from "../../engine/procedure/implied.ts";
import { adviceRule } from "./advice.ts";
import { inStep } from "./rule.ts";

export const impliedAfter = adviceRule("implied afters", (module, graph, content, reporter) => {
  const { steps } = module.procedure;
  for (const { step: id, first, way } of impliedAfters(graph, steps)) {
    const step = steps.find((one) => one.id === id)!;
    const found = `"${first}" comes before "${id}" already: ${way.join(" → ")}; so the operation sheet does not show this pair`;
    reporter.report("after-implied", inStep(content, module, step, ["after", first], "key"), found);
  }
});
