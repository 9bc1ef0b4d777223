/** What pages of other modules, and of the whole programme, say of a module. */
import type { SignOffRules } from "../engine/competency/rules.ts";
import type { Sessions } from "../engine/procedure/sessions/plan-sessions.ts";
import type { Tray } from "../engine/procedure/tray.ts";
import { orderOff } from "../engine/procedure/tray-account.ts";
import type { ModuleQuiz } from "../model/content.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import type { ModuleCard, Practice, StepCard } from "../model/site.ts";

export function cardOf(
  { id, title, revision, summary, needs, tools, substances, hazards, procedure }: Module,
  practices: readonly Practice[],
  quiz: ModuleQuiz | undefined,
  sessions: Sessions | undefined,
  rules: SignOffRules,
  trays: readonly Tray[],
): ModuleCard {
  const { steps } = procedure;
  return {
    ...{ id, title, revision, summary, needs },
    steps: steps.map(stepCard),
    fillsTray: orderOff(procedure, trays).length > 0,
    handsOn: sum(steps.map(({ time }) => time)),
    waits: sum(steps.map(({ wait }) => wait)),
    sessions: sessions === undefined ? undefined : (sessions.sessions?.length ?? "longer"),
    practices: practices.length,
    questions: quiz?.quiz.questions.length ?? 0,
    hasKey: quiz !== undefined && quiz.quiz.questions.length > 0 && quiz.quiz.supervised !== true,
    rules,
    uses: { tool: tools, substance: substances.map(({ use }) => use), hazard: hazards },
  };
}

function stepCard({ id, title, tools, substances, hazards }: ModuleStep, index: number): StepCard {
  return { id, title, number: index + 1, uses: { tool: tools, substance: substances, hazard: hazards } };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
