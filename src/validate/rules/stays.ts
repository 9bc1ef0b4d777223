/** Every fastener set of the table is handled by some step, or is said to stay; and what is said to stay stays. */
import { inFile, moduleRule } from "./rule.ts";

export const stays = moduleRule("fasteners that stay", (module, content, reporter) => {
  const { fasteners, steps } = module.procedure;
  if (steps.length === 0) return;
  const handled = new Map(steps.flatMap((step) => step.acts.map(({ target }) => [target, step.id])));
  for (const set of fasteners.values()) {
    const step = handled.get(set.id);
    if (set.stays !== undefined && step !== undefined) {
      const spot = inFile(content, module, ["fasteners", set.id, "stays"], "key");
      reporter.report("stays-undone", spot, `"${set.id}" (${set.name}) is to stay, and "${step}" handles it`);
    }
    if (set.stays === undefined && step === undefined) {
      const spot = inFile(content, module, ["fasteners", set.id], "key");
      reporter.report("never-undone", spot, `no step undoes "${set.id}" (${set.name})`);
    }
  }
});
