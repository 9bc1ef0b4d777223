/** Explicit precedence must name earlier steps, close no circle, and may lift only what is free to be lifted. */

import { swapsThatCannotBe } from "../../engine/procedure/conflicts.ts";
import { type BoundPair, boundPairs } from "../../engine/procedure/derive.ts";
import type { Code } from "../../model/codes.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import { nearestWords } from "../nearest.ts";
import { inStep, moduleRule } from "./rule.ts";

export const precedence = moduleRule("precedence", (module, content, reporter) => {
  const pairs = boundPairs(module.procedure);
  for (const step of module.procedure.steps) {
    for (const other of step.after.keys()) {
      const fault = afterFault(step, other, module, pairs);
      if (fault === undefined) continue;
      const later = module.procedure.steps.find(({ id }) => id === other && id !== step.id);
      const place = later && { ...inStep(content, module, later, ["id"]), message: `"${other}" stands here` };
      reporter.report(fault.code, inStep(content, module, step, ["after", other], "key"), fault.found, place);
    }
    for (const other of step.maySwap.keys()) {
      const fault = swapFault(step, other, module, pairs);
      if (fault !== undefined)
        reporter.report(fault.code, inStep(content, module, step, ["may-swap", other], "key"), fault.found);
    }
  }
  for (const { step: id, with: other } of swapsThatCannotBe(module.procedure)) {
    const step = module.procedure.steps.find((one) => one.id === id)!;
    const spot = inStep(content, module, step, ["may-swap", other]);
    reporter.report(
      "swap-changes-tray",
      spot,
      `"${id}" and "${other}" can't change places: one changes what the other needs`,
    );
  }
});

interface Found {
  readonly code: Code;
  readonly found: string;
}

function afterFault(
  step: ModuleStep,
  other: string,
  module: Module,
  pairs: readonly BoundPair[],
): Found | undefined {
  const ids = module.procedure.steps.map(({ id }) => id);
  if (!ids.includes(other)) {
    return {
      code: "after-nothing",
      found: `after: names "${other}", and no step has that id${nearestWords(other, ids)}`,
    };
  }
  if (other === step.id) return { code: "self-reference", found: `"${step.id}" can't come after itself` };
  if (ids.indexOf(other) < ids.indexOf(step.id)) return undefined;
  const way = findWay(step.id, other, pairs);
  if (way === undefined)
    return { code: "after-later", found: `"${step.id}" is to come after "${other}", which is written later` };
  const circle = way.map((pair) => `before "${pair.then}" (${pair.because.join("; ")})`).join(" ");
  return {
    code: "cycle",
    found: `"${step.id}" is to come after "${other}", but "${step.id}" comes ${circle}, and so before itself`,
  };
}

function swapFault(
  step: ModuleStep,
  other: string,
  module: Module,
  pairs: readonly BoundPair[],
): Found | undefined {
  if (!module.procedure.steps.some(({ id }) => id === other)) return undefined;
  const pair = pairs.find(
    ({ first, then }) => (first === step.id && then === other) || (first === other && then === step.id),
  );
  if (pair === undefined)
    return {
      code: "swap-unbound",
      found: `"${step.id}" may swap with "${other}", but no rule binds these two steps`,
    };
  if (!pair.lifted)
    return {
      code: "swap-unbound",
      found: `"${step.id}" may swap with "${other}", but after: demands this pair`,
    };
  return pair.critical
    ? {
        code: "swap-critical",
        found: `"${pair.first}" before "${pair.then}" is critical: ${pair.because.join("; ")}`,
      }
    : undefined;
}

/** The shortest chain of bound pairs from one step to another. */
function findWay(from: string, to: string, pairs: readonly BoundPair[]): BoundPair[] | undefined {
  const reached = new Map<string, BoundPair[]>([[from, []]]);
  const waiting = [from];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    if (at === to) return reached.get(at);
    for (const pair of pairs) {
      if (pair.first !== at || pair.lifted || reached.has(pair.then)) continue;
      reached.set(pair.then, [...reached.get(at)!, pair]);
      waiting.push(pair.then);
    }
  }
  return undefined;
}
