/** The steps of a module, cut where the phase changes, with the plain prose that stands among them. */
import { t } from "../src/engine/words.ts";
import type { ModuleView, StepView } from "../src/model/site.ts";
import type { Section } from "../src/model/source.ts";

export interface PhaseOfWork {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly StepView[];
  /** Steps and plain sections in the written order. */
  readonly items: readonly (StepView | Section)[];
}

export interface Division {
  readonly introduction: readonly Section[];
  /** Sections with headings before the first step. */
  readonly before: readonly Section[];
  readonly phases: readonly PhaseOfWork[];
  /** Sections after the last step, from the first heading of the highest level on. */
  readonly after: readonly Section[];
}

export const isStep = (item: StepView | Section): item is StepView => "step" in item;

/** Divides what is written in a module. A lower heading after the last step still belongs to that step. */
export function divide({ module, steps }: ModuleView): Division {
  const bySection = new Map(steps.map((view) => [view.step.section, view]));
  const items = module.sections.map((section) => bySection.get(section) ?? section);
  const first = items.findIndex(isStep);
  const start = first === -1 ? items.length : first;
  const end = endOfWork(items);
  const before = items.slice(0, start) as Section[];
  return {
    introduction: before.filter(({ level }) => level === 0),
    before: before.filter(({ level }) => level > 0),
    phases: phasesOf(items.slice(start, end), module.phases),
    after: items.slice(Math.max(start, end)) as Section[],
  };
}

function endOfWork(items: readonly (StepView | Section)[]): number {
  const last = items.findLastIndex(isStep);
  const rest = items.slice(last + 1) as Section[];
  const next = rest.findIndex(({ level }) => level <= 2);
  return next === -1 ? items.length : last + 1 + next;
}

function phasesOf(
  items: readonly (StepView | Section)[],
  titles: ReadonlyMap<string, string>,
): PhaseOfWork[] {
  const phases: { id: string; title: string; steps: StepView[]; items: (StepView | Section)[] }[] = [];
  const seen = new Set<string>();
  for (const item of items) {
    const id: string | undefined = isStep(item) ? (item.step.phase ?? "") : phases.at(-1)?.id;
    if (id !== phases.at(-1)?.id) {
      const title = titles.get(id ?? "") ?? (phases.length === 0 ? t`The work` : t`Further work`);
      phases.push({
        id: id ?? "",
        title: seen.has(id ?? "") ? t`${title}, continued` : title,
        steps: [],
        items: [],
      });
      seen.add(id ?? "");
    }
    const phase = phases.at(-1)!;
    phase.items.push(item);
    if (isStep(item)) phase.steps.push(item);
  }
  return phases;
}
