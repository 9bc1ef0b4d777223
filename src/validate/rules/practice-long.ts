/** A practice with more steps than people can hold in mind: where to cut it. */
import type { Module, ModuleStep } from "../../model/module.ts";
import { evenly, mostSteps, type PracticeSteps, practiceSteps } from "../../model/practice.ts";
import { adviceRule, spotOfPractice } from "./advice.ts";

export const practiceLong = adviceRule("long practices", (module, _, content, reporter) => {
  for (const practice of practiceSteps(module)) {
    const { title, steps } = practice;
    if (steps.length <= mostSteps) continue;
    const found = `"${title}" asks for ${steps.length} steps; about ${mostSteps} is what people hold in mind and can compare`;
    const spot = spotOfPractice(practice, module, content);
    reporter.report("practice-long", spot, found, undefined, `Cut it ${cutWords(practice, module)}.`);
  }
});

/** By phases, where it has steps of several and none of them is too long; else at steps. */
function cutWords(practice: PracticeSteps, module: Module): string {
  const asked = new Set(practice.steps);
  const steps = module.procedure.steps.filter(({ id }) => asked.has(id));
  const phases = new Map<string | undefined, number>();
  for (const { phase } of steps) phases.set(phase, (phases.get(phase) ?? 0) + 1);
  const fits = phases.size > 1 && !phases.has(undefined) && Math.max(...phases.values()) <= mostSteps;
  if (fits) return `by its phases: ${[...phases].map(([phase, count]) => `${phase} (${count})`).join(", ")}`;
  return `before ${cutsOf(steps)
    .map(({ id }) => `"${id}"`)
    .join(" and before ")}`;
}

/** The steps with which new stretches begin: evenly, moved to just after a safe place to leave off where one is near. */
function cutsOf(steps: readonly ModuleStep[]): ModuleStep[] {
  const stretches = evenly(steps, mostSteps);
  return stretches.slice(1).map(([first]) => {
    const at = steps.indexOf(first!);
    const near = [0, -1, 1].find((by) => steps[at + by - 1]?.stop === true && at + by < steps.length);
    return steps[at + (near ?? 0)]!;
  });
}
