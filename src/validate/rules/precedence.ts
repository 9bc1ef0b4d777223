/** Explicit precedence must name earlier steps, close no circle, and may lift only what is free to be lifted. */
import { type BoundPair, boundPairs } from "../../engine/procedure/derive.ts";
import { swapsThatCannotBe } from "../../engine/procedure/conflicts.ts";
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter } from "../reporter.ts";
import { inStep, moduleRule } from "./rule.ts";

export const precedence = moduleRule("precedence", (module, content, reporter) => {
  const pairs = boundPairs(module.procedure);
  const order = new Map(module.procedure.steps.map((step, index) => [step.id, index]));
  for (const step of module.procedure.steps) {
    for (const other of step.after.keys()) checkAfter(step, other, module, order, pairs, content, reporter);
    for (const other of step.maySwap.keys()) checkSwap(step, other, module, pairs, content, reporter);
  }
  for (const { step: id, with: other } of swapsThatCannotBe(module.procedure)) {
    const step = module.procedure.steps.find((one) => one.id === id)!;
    const spot = inStep(content, module, step, ["may-swap", other]);
    reporter.report("swap-changes-tray", spot, `"${id}" and "${other}" can't change places: one changes what the other needs`);
  }
});

function checkAfter(
  step: ModuleStep,
  other: string,
  module: Module,
  order: ReadonlyMap<string, number>,
  pairs: readonly BoundPair[],
  content: Content,
  reporter: Reporter,
): void {
  const spot = inStep(content, module, step, ["after", other], "key");
  const at = order.get(other);
  if (at === undefined) {
    return reporter.report("after-nothing", spot, `after: names "${other}", and no step has that id${nearestWords(other, order.keys())}`);
  }
  if (at < order.get(step.id)!) return;
  if (other === step.id) return reporter.report("self-reference", spot, `"${step.id}" can't come after itself`);
  const later = module.procedure.steps[at]!;
  const place = { ...inStep(content, module, later, ["id"]), message: `"${other}" stands here` };
  const way = findWay(step.id, other, pairs);
  if (way === undefined) {
    return reporter.report("after-later", spot, `"${step.id}" is to come after "${other}", which is written later`, place);
  }
  const circle = [`"${step.id}"`, ...way.map((pair) => `before "${pair.then}" (${pair.because.join("; ")})`)].join(" ");
  reporter.report("cycle", spot, `"${step.id}" is to come after "${other}", but ${circle}, and so before itself`, place);
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

function checkSwap(step: ModuleStep, other: string, module: Module, pairs: readonly BoundPair[], content: Content, reporter: Reporter): void {
  const spot = inStep(content, module, step, ["may-swap", other], "key");
  const pair = pairs.find(({ first, then }) => (first === step.id && then === other) || (first === other && then === step.id));
  if (pair === undefined || !pair.lifted) {
    if (module.procedure.steps.some(({ id }) => id === other)) {
      const why = pair === undefined ? "no rule binds these two steps" : "after: demands this pair";
      reporter.report("swap-unbound", spot, `"${step.id}" may swap with "${other}", but ${why}`);
    }
  } else if (pair.critical) {
    reporter.report("swap-critical", spot, `"${pair.first}" before "${pair.then}" is critical: ${pair.because.join("; ")}`);
  }
}
