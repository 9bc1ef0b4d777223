import type { SignOffRules } from "../engine/competency/rules.ts";
import { countOrders, quickDownSetLimit } from "../engine/procedure/count-orders.ts";
import type { Graph } from "../engine/procedure/graph.ts";
import { graphOfProcedure } from "../engine/procedure/graph-of-procedure.ts";
import type { Pair } from "../engine/procedure/precedence.ts";
import { restrict } from "../engine/procedure/restrict.ts";
import { planSessions } from "../engine/procedure/sessions/plan-sessions.ts";
import { swapsOf } from "../engine/procedure/swaps.ts";
import type { Tray } from "../engine/procedure/tray.ts";
import { walkOfProcedure } from "../engine/procedure/walk-of-procedure.ts";
import type { Content, ModuleQuiz } from "../model/content.ts";
import { addressOfPath, readLink } from "../model/link.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import { remembered } from "../model/remembered.ts";
import type { ModuleView, StepView } from "../model/site.ts";
import type { Source } from "../model/source.ts";
import { cardOf } from "./card.ts";
import { practicesOf } from "./practices.ts";
import { rulesFor } from "./rules.ts";

export function deriveModule(module: Module, content: Content): ModuleView {
  const { quizzes, sources, programme } = content;
  const { session, signOff } = programme;
  return viewOf(module, quizzes.get(module.id), sources.get(module.path)!, session, signOff);
}

/** `session` is the length of a session in minutes. */
const viewOf = remembered(
  (
    module: Module,
    quiz: ModuleQuiz | undefined,
    source: Source,
    session: number,
    signOff: SignOffRules,
  ): ModuleView => {
    const { steps } = module.procedure;
    const graph = soundGraph(module);
    const precedence = restrict(graph, graph.precedence.steps);
    const { trays } = walkOfProcedure(module.procedure);
    const practices = practicesOf(module, graph);
    const isTimed = steps.some(({ time, wait }) => time > 0 || wait > 0);
    const sessions = isTimed ? planSessions(steps, session) : undefined;
    return {
      module,
      card: cardOf(module, practices, quiz, sessions, rulesFor(module, signOff, quiz?.quiz), trays),
      names: namesOf(module, quiz, source),
      steps: steps.map((step, index) => stepView(step, index, trays[index]!, precedence.pairs, steps)),
      precedence,
      swaps: swapsOf(module.procedure, graph),
      orders: countOrders(graph, quickDownSetLimit),
      practices,
      sessions,
      quiz,
    };
  },
);

/** The modules that it needs or links to. */
function namesOf(module: Module, quiz: ModuleQuiz | undefined, source: Source): string[] {
  const hrefs = [
    ...source.links.map(({ href }) => href),
    ...(quiz?.quiz.questions ?? []).map(({ see }) => see),
  ];
  const linked = hrefs.map((href) => {
    const link = readLink(module.path, href);
    const address = link.kind === "page" ? addressOfPath(link.path) : undefined;
    return address?.kind === "module" ? address.id : undefined;
  });
  const before = module.beginsFrom === undefined ? [] : [module.beginsFrom];
  return [...new Set([...module.needs, ...before, ...linked.filter((id) => id !== undefined)])];
}

/** Throws where the steps of the module go round in a circle. */
export function soundGraph(module: Module): Graph {
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
