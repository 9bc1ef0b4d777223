/** Ids are unique where they are looked up: steps in a module, parts and fastener sets together. */
import type { ModuleStep } from "../../model/module.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const duplicates = moduleRule("duplicates", (module, content, reporter) => {
  const seen = new Map<string, ModuleStep>();
  for (const step of module.procedure.steps) {
    const first = seen.get(step.id);
    if (first === undefined) seen.set(step.id, step);
    else {
      const other = { ...inStep(content, module, first, ["id"]), message: "the first one stands here" };
      reporter.report(
        "duplicate-id",
        inStep(content, module, step, ["id"]),
        `two steps have the id "${step.id}"`,
        other,
      );
    }
  }
  for (const id of module.procedure.parts.keys()) {
    if (!module.procedure.fasteners.has(id)) continue;
    const other = { ...inFile(content, module, ["parts", id], "key"), message: "the part stands here" };
    const spot = inFile(content, module, ["fasteners", id], "key");
    reporter.report("duplicate-id", spot, `"${id}" is both a part and a fastener set`, other);
  }
});
