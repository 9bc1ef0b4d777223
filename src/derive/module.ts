import type { Graph } from "../engine/procedure/graph.ts";
import { graphOfProcedure } from "../engine/procedure/graph-of-procedure.ts";
import type { Pair } from "../engine/procedure/precedence.ts";
import { restrict } from "../engine/procedure/restrict.ts";
import type { Tray } from "../engine/procedure/tray.ts";
import { walk } from "../engine/procedure/walk.ts";
import type { Content } from "../model/content.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import type { ModuleView, StepView } from "../model/site.ts";
import { practicesOf } from "./practices.ts";

export function deriveModule(module: Module, content: Content): ModuleView {
  const { steps } = module.procedure;
  const graph = soundGraph(module);
  const precedence = restrict(graph, graph.precedence.steps);
  const { trays } = walk(module.procedure);
  return {
    module,
    steps: steps.map((step, index) => stepView(step, index, trays[index]!, precedence.pairs, steps)),
    precedence,
    practices: practicesOf(module, graph),
    quiz: content.quizzes.get(module.id),
    neededBy: [...content.modules.values()]
      .filter(({ needs }) => needs.includes(module.id))
      .map(({ id }) => id),
    handsOn: sum(steps.map(({ time }) => time)),
    waits: sum(steps.map(({ wait }) => wait)),
  };
}

function soundGraph(module: Module): Graph {
  const { graph, cycle } = graphOfProcedure(module.procedure);
  if (graph === null) throw new Error(`derive was handed a cycle: ${cycle.join(", ")}`);
  return graph;
}

function stepView(
  step: ModuleStep,
  index: number,
  tray: Tray,
  pairs: readonly Pair[],
  steps: readonly ModuleStep[],
): StepView {
  const recorded = steps
    .filter((from) => from.recordFor === step.id)
    .flatMap((from) => from.record.map((text) => ({ from, text })));
  return { step, number: index + 1, tray, needs: pairs.filter(({ then }) => then === step.id), recorded };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
