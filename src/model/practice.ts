/** Which steps a trainee is given to put in order: what the author chose, or a phase at a time where nothing is chosen. */
import { t } from "../engine/words.ts";
import type { Module, ModuleStep } from "./module.ts";

/** A practice as its author wrote it: the steps of a phase, or those named. */
export interface ChosenPractice {
  readonly id: string;
  readonly title: string;
  readonly phase: string | undefined;
  readonly steps: readonly string[] | undefined;
  /** Steps that do not belong to the job asked for and are to be left out. */
  readonly mixedIn: readonly string[];
}

/** A practice with the steps that it asks for. */
export interface PracticeSteps {
  readonly id: string;
  readonly title: string;
  /** In the written order where they are not chosen one by one. */
  readonly steps: readonly string[];
  readonly mixedIn: readonly string[];
  /** Its place among those that the author chose; undefined where it was not chosen. */
  readonly chosen: number | undefined;
}

/** About as many things as people hold in mind and can compare in one list. */
export const mostSteps = 8;

/** The practices of a module: those chosen, or each phase, cut into stretches of at most `mostSteps`. O(steps · practices). */
export function practiceSteps({ practices, phases, procedure: { steps } }: Module): PracticeSteps[] {
  if (practices === undefined) return stretches(steps, phases);
  return practices.map(({ id, title, phase, steps: named, mixedIn }, chosen) => ({
    ...{ id, title, mixedIn, chosen },
    steps: named ?? steps.filter((step) => step.phase === phase).map((step) => step.id),
  }));
}

function stretches(steps: readonly ModuleStep[], names: ReadonlyMap<string, string>): PracticeSteps[] {
  const phases = byPhase(steps);
  return [...phases].flatMap(([phase, own]) => {
    const title = names.get(phase) ?? (phases.size === 1 ? t`The whole procedure` : t`Other steps`);
    return evenly(own, mostSteps).map((some, index, all) => ({
      id: [phase === "" ? "steps" : phase, ...(all.length > 1 ? [index + 1] : [])].join("-"),
      title: all.length > 1 ? t`${title}, part ${index + 1}` : title,
      steps: some.map(({ id }) => id),
      mixedIn: [],
      chosen: undefined,
    }));
  });
}

/** Phases in the order in which their first steps are written; "" for steps without one. */
function byPhase(steps: readonly ModuleStep[]): Map<string, ModuleStep[]> {
  const phases = new Map<string, ModuleStep[]>();
  for (const step of steps) phases.set(step.phase ?? "", [...(phases.get(step.phase ?? "") ?? []), step]);
  return phases;
}

/** Cuts a list into the fewest stretches of at most `most`, as even as can be. */
export function evenly<Item>(items: readonly Item[], most: number): Item[][] {
  const count = Math.ceil(items.length / most);
  return Array.from({ length: count }, (_, i) =>
    items.slice(Math.round((i * items.length) / count), Math.round(((i + 1) * items.length) / count)),
  );
}
