/** What a draft says is still to be written; each mark is an error until the author has taken it out. */
import type { Spot } from "../reporter.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const draftMarks = moduleRule("draft marks", (module, content, reporter) => {
  const report = (marks: readonly string[], at: (index: number) => Spot): void => {
    for (const [index, mark] of marks.entries())
      reporter.report("draft-mark", at(index), `not finished: ${mark.replace(/\.$/, "")}`);
  };
  report(module.draft, (index) => inFile(content, module, ["draft", index]));
  for (const step of module.procedure.steps)
    report(step.draft, (index) => inStep(content, module, step, ["draft", index]));
});
