/** What an observation sheet asks a mentor to look at, from the module itself. */

import type { ReleaseCard } from "../../engine/competency/release.ts";
import { t } from "../../engine/words.ts";

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

/**
 * The steps with a check, and the critical ones, phase by phase in the order of work. Of a module that has neither, all steps: there
 * is then nothing that says which of them matter.
 */
export function sheetOf({ phases, steps, title }: ReleaseCard): SheetPhase[] {
  const telling = steps.filter(({ check, critical }) => check !== undefined || critical);
  const shown = telling.length === 0 ? steps : telling;
  if (phases.length === 0) return [{ id: "", title, checks: shown.map(toCheck) }];
  return phases.map(({ id, title }) => ({
    ...{ id, title },
    checks: shown.filter(({ phase }) => phase === id).map(toCheck),
  }));
}

const toCheck = ({ id, title, check, critical }: ReleaseCard["steps"][number]): SheetCheck => ({
  ...{ step: id, title, check },
  isCritical: critical,
});

/** As-left checks have no step: what was seen of them goes into the words. */
export function withAsLeft(words: string, seen: readonly string[]): string {
  const left = seen.length === 0 ? "" : t`As left, seen: ${seen.join("; ")}.`;
  return [words.trim(), left].filter((part) => part !== "").join("\n");
}

export const asLeftText = ({ check, limit }: ReleaseCard["asLeft"][number]): string =>
  limit === undefined ? check : `${check} (${limit})`;
