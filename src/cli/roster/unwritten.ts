/** What a module leaves unsaid that goes with the last person who knows it. */
import type { ReleaseCard } from "../../engine/competency/release.ts";

export function unwrittenOf({ quiz, practices, steps, asLeft }: ReleaseCard): string[] {
  const unchecked = steps.filter(({ critical, check }) => critical && check === undefined);
  return [
    ...(quiz === undefined ? ["no quiz"] : []),
    ...(steps.length > 1 && practices.length === 0 ? ["nothing to practise"] : []),
    ...unchecked.map(({ title }) => `what to see before going on after "${title}"`),
    ...(steps.length > 0 && asLeft.length === 0 ? ["what is checked once the work is done"] : []),
  ];
}
