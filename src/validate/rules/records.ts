/** What is recorded before slackening must be printed again beside the step that needs it. */
import { inStep, moduleRule } from "./rule.ts";

export const records = moduleRule("records", (module, content, reporter) => {
  const order = new Map(module.procedure.steps.map((step, index) => [step.id, index]));
  for (const step of module.procedure.steps) {
    if (step.record.length > 0 && step.recordFor === undefined) {
      reporter.report(
        "record-nowhere",
        inStep(content, module, step, ["record"], "key"),
        `"${step.id}" records something for no step`,
      );
    }
    const target = step.recordFor === undefined ? undefined : order.get(step.recordFor);
    if (target !== undefined && target <= order.get(step.id)!) {
      reporter.report(
        "self-reference",
        inStep(content, module, step, ["record-for"]),
        `"${step.recordFor}" does not come after "${step.id}"`,
      );
    }
  }
});
