/** Acts must suit what they are done to, and counts must be possible. */
import type { ActKind } from "../../engine/procedure/procedure.ts";
import type { Content } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

const forFastenersOnly: ReadonlySet<ActKind> = new Set<ActKind>(["slacken", "tighten"]);

export const acts = moduleRule("acts", (module, content, reporter) => {
  const { parts, fasteners } = module.procedure;
  for (const step of module.procedure.steps) {
    for (const { kind, target, count } of step.acts) {
      const spot = inStep(content, module, step, [kind, target]);
      if (parts.has(target) && forFastenersOnly.has(kind)) {
        reporter.report("impossible-act", spot, `"${target}" is a part, and this step would ${kind} it`);
      }
      const pieces = parts.get(target)?.count ?? count;
      if (count !== undefined && count !== pieces) {
        reporter.report(
          "act-count",
          spot,
          `"${target}" is ${partWords(pieces)}, and this step counts ${count}`,
        );
      }
      const there = fasteners.get(target)?.count;
      if (there !== undefined && count !== undefined && count > there) {
        reporter.report("act-count", spot, `"${target}" has ${there}, and this step counts ${count}`);
      }
    }
  }
  checkHolds(module, content, reporter);
});

/** A part moves as a whole. */
const partWords = (pieces = 1): string =>
  pieces === 1 ? "one part" : `one part of ${pieces} pieces that move together`;

function checkHolds(module: Module, content: Content, reporter: Reporter): void {
  const { parts, fasteners } = module.procedure;
  for (const part of parts.values()) {
    for (const [set, hold] of part.heldBy) {
      const there = fasteners.get(set)?.count;
      if (there === undefined || hold.out + hold.slack <= there) continue;
      const spot = inFile(content, module, ["parts", part.id, "held-by", set]);
      reporter.report(
        "act-count",
        spot,
        `"${set}" has ${there}, and held-by: counts ${hold.out + hold.slack}`,
      );
    }
  }
}
