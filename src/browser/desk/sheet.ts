/** What an observation sheet asks a mentor to look at, from the module itself. */
import type { ReleaseCard } from "../../engine/competency/release.ts";

export interface SheetCheck {
  readonly step: string;
  readonly title: string;
  /** What to see before going on; undefined where the step is critical and says nothing of the kind. */
  readonly check: string | undefined;
  readonly isCritical: boolean;
}

export interface SheetPhase {
  /** "" where the module has no phases. */
  readonly id: string;
  readonly title: string;
  readonly checks: readonly SheetCheck[];
}

/** The steps with a check, and the critical ones, phase by phase in the order of work. */
export function sheetOf({ phases, steps, title }: ReleaseCard): SheetPhase[] {
  const checks = steps.filter(({ check, critical }) => check !== undefined || critical);
  const of = (phase: string | undefined): SheetCheck[] =>
    checks
      .filter((step) => (step.phase ?? "") === (phase ?? ""))
      .map((step) => ({ step: step.id, title: step.title, check: step.check, isCritical: step.critical }));
  if (phases.length === 0) return [{ id: "", title, checks: checks.map(toCheck) }];
  return phases.map((phase) => ({ id: phase.id, title: phase.title, checks: of(phase.id) }));
}

const toCheck = ({ id, title, check, critical }: ReleaseCard["steps"][number]): SheetCheck => ({
  ...{ step: id, title, check },
  isCritical: critical,
});

/** As-left checks have no step: what was seen of them goes into the words. */
export function withAsLeft(words: string, seen: readonly string[]): string {
  const left = seen.length === 0 ? "" : `As left, seen: ${seen.join("; ")}.`;
  return [words.trim(), left].filter((part) => part !== "").join("\n");
}

export const asLeftText = ({ check, limit }: ReleaseCard["asLeft"][number]): string =>
  limit === undefined ? check : `${check} (${limit})`;
