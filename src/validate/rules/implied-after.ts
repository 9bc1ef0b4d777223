/** An `after` that other pairs imply already: its reason is read nowhere. */
import { impliedAfters } from "../../engine/procedure/implied.ts";
import { adviceRule } from "./advice.ts";
import { inStep } from "./rule.ts";

export const impliedAfter = adviceRule("implied afters", (module, graph, content, reporter) => {
  const { steps } = module.procedure;
  for (const { step: id, first, way } of impliedAfters(graph, steps)) {
    const step = steps.find((one) => one.id === id)!;
    const found = `"${first}" comes before "${id}" already: ${way.join(" → ")}; so this reason is read nowhere`;
    reporter.report("after-implied", inStep(content, module, step, ["after", first], "key"), found);
  }
});
