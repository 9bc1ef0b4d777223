/** What a trainee is given to put in order: a phase at a time, or stretches where there are no phases. */
import type { Graph } from "../engine/procedure/graph.ts";
import { restrict } from "../engine/procedure/restrict.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import type { Practice } from "../model/site.ts";

/** About as many things as people hold in mind and can compare in one list. */
const mostSteps = 8;

export function practicesOf(module: Module, graph: Graph): Practice[] {
  const titles = new Map(module.procedure.steps.map((step) => [step.id, step.title]));
  return stretches(module)
    .map(({ id, title, steps }) => ({
      id,
      title,
      graph: restrict(
        graph,
        steps.map((step) => step.id),
        (step) => titles.get(step) ?? step,
      ),
    }))
    .filter((practice) => practice.graph.pairs.length > 0);
}

interface Stretch {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly ModuleStep[];
}

function stretches(module: Module): Stretch[] {
  const phases = byPhase(module.procedure.steps);
  return [...phases].flatMap(([phase, steps]) => {
    const title = module.phases.get(phase) ?? (phases.size === 1 ? "The whole procedure" : "Other steps");
    return evenly(steps).map((some, index, all) => ({
      id: [phase === "" ? "steps" : phase, ...(all.length > 1 ? [index + 1] : [])].join("-"),
      title: all.length > 1 ? `${title}, part ${index + 1}` : title,
      steps: some,
    }));
  });
}

/** Phases in the order in which their first steps are written; "" for steps without one. */
function byPhase(steps: readonly ModuleStep[]): Map<string, ModuleStep[]> {
  const phases = new Map<string, ModuleStep[]>();
  for (const step of steps) phases.set(step.phase ?? "", [...(phases.get(step.phase ?? "") ?? []), step]);
  return phases;
}

/** Cuts a list into the fewest stretches of at most `mostSteps`, as even as can be. */
function evenly(steps: readonly ModuleStep[]): ModuleStep[][] {
  const count = Math.ceil(steps.length / mostSteps);
  return Array.from({ length: count }, (_, i) =>
    steps.slice(Math.round((i * steps.length) / count), Math.round(((i + 1) * steps.length) / count)),
  );
}
