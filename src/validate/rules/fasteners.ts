/** Threads must be readable; a torque figure must have a source. */

import { parseDesignation } from "../../engine/workshop/designation.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { FastenerKind } from "../../model/module.ts";
import { nearestPhrase } from "../nearest.ts";
import { inFile, moduleRule } from "./rule.ts";

/** Kinds whose threads follow no standard that could be looked up, or that have none. */
const unstandardised: ReadonlySet<FastenerKind> = new Set<FastenerKind>([
  "wood screw",
  "taper pin",
  "rivet",
  "makers own",
]);

export const fasteners = moduleRule("fasteners", (module, content, reporter) => {
  for (const set of module.procedure.fasteners.values()) {
    const at = (field: string) => inFile(content, module, ["fasteners", set.id, field]);
    const thread =
      set.thread === undefined || unstandardised.has(set.kind) ? undefined : parseDesignation(set.thread);
    if (thread?.ok === false) {
      const { found, expected, nearest } = thread.problem;
      reporter.report(
        "wrong-thread",
        at("thread"),
        `the thread reads "${found}"; expected ${expected}${nearestPhrase(nearest)}`,
      );
    }
    if (set.torque !== undefined && parseQuantity(set.torque).ok && set.torqueSource === undefined) {
      reporter.report(
        "torque-source",
        at("torque"),
        `the torque of "${set.id}" is a figure, ${set.torque}, without a source`,
      );
    }
  }
});
