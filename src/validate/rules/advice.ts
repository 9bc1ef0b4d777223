/** Advice to the author: what is not wrong, and could be better. It waits until a module has no errors. */
import type { Graph } from "../../engine/procedure/graph.ts";
import { graphOfProcedure } from "../../engine/procedure/graph-of-procedure.ts";
import type { Content } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { PracticeSteps } from "../../model/practice.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { inFile, inStep, moduleRule, type Rule } from "./rule.ts";

/** A rule that looks at one sound module at a time, with its graph. */
export function adviceRule(
  name: string,
  check: (module: Module, graph: Graph, content: Content, reporter: Reporter) => void,
): Rule {
  return moduleRule(name, (module, content, reporter) => {
    if (hasErrors(module, reporter)) return;
    const { graph } = graphOfProcedure(module.procedure);
    if (graph !== null) check(module, graph, content, reporter);
  });
}

export const hasErrors = ({ path }: Module, { diagnostics }: Reporter): boolean =>
  diagnostics.some(({ file, severity }) => file === path && severity === "error");

/** Where a practice comes from: its own lines, the name of its phase, or its first step. */
export function spotOfPractice(practice: PracticeSteps, module: Module, content: Content): Spot {
  if (practice.chosen !== undefined) return inFile(content, module, ["practices", practice.chosen]);
  const first = module.procedure.steps.find(({ id }) => id === practice.steps[0])!;
  return first.phase === undefined || !module.phases.has(first.phase)
    ? inStep(content, module, first, ["id"])
    : inFile(content, module, ["phases", first.phase], "key");
}
