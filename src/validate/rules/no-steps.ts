/** A module that lists parts to take off and has no step has lost its steps. */
import { inFile, moduleRule } from "./rule.ts";

export const noSteps = moduleRule("no steps", (module, content, reporter) => {
  const { parts, fasteners, steps } = module.procedure;
  if (steps.length > 0 || parts.size + fasteners.size === 0) return;
  const field = parts.size > 0 ? "parts" : "fasteners";
  reporter.report(
    "no-steps",
    inFile(content, module, [field], "key"),
    `the module lists ${field}, and no block of it is a step`,
    undefined,
    "Write the block of each step as ```yaml step below a heading.",
  );
});
