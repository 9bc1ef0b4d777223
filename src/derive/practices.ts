/** What a trainee is given to put in order, with the precedence among it. */
import type { Graph } from "../engine/procedure/graph.ts";
import { restrict } from "../engine/procedure/restrict.ts";
import type { Module } from "../model/module.ts";
import { practiceSteps } from "../model/practice.ts";
import type { Practice } from "../model/site.ts";

/** Practices that nobody chose are left out where any order of theirs is right. */
export function practicesOf(module: Module, graph: Graph): Practice[] {
  const titles = new Map(module.procedure.steps.map((step) => [step.id, step.title]));
  return practiceSteps(module)
    .map(({ id, title, steps, mixedIn, chosen }) => ({
      ...{ id, title, mixedIn },
      graph: restrict(graph, steps, (step) => titles.get(step) ?? step),
      isChosen: chosen !== undefined,
    }))
    .filter(({ graph: own, isChosen }) => isChosen || own.pairs.length > 0)
    .map(({ isChosen: _, ...practice }) => practice);
}
