/** Which steps stand together in a band of the drawing: those of a phase, as far as the precedence allows. */
import type { Precedence } from "../../src/engine/procedure/precedence.ts";

export interface Band {
  readonly phase: string;
  /** An earlier band has steps of the same phase. */
  readonly isContinued: boolean;
  /** In step order. */
  readonly steps: readonly string[];
}

/**
 * Bands one below the other, so that every pair leads down or stays in its band. A phase that can be finished comes next,
 * the one written first of them; where none can be, as much as can be of the phase of the first step that is left. The
 * steps must stand in a right order. O(bands · (steps · phases + pairs)).
 */
export function bandsOf({ steps, pairs }: Precedence, phaseOf: (step: string) => string): Band[] {
  const firsts = new Map(steps.map((step) => [step, [] as string[]]));
  for (const { first, then } of pairs) firsts.get(then)!.push(first);
  const waiting = new Map<string, string[]>();
  for (const step of steps) waiting.set(phaseOf(step), [...(waiting.get(phaseOf(step)) ?? []), step]);
  const placed = new Set<string>();
  const bands: Band[] = [];
  while (placed.size < steps.length) {
    const chosen = nextBand(waiting, steps.find((step) => !placed.has(step))!, firsts, placed);
    const isContinued = bands.some(({ phase }) => phase === chosen.phase);
    bands.push({ ...chosen, isContinued });
    for (const step of chosen.steps) placed.add(step);
    waiting.set(
      chosen.phase,
      waiting.get(chosen.phase)!.filter((step) => !placed.has(step)),
    );
  }
  return bands;
}

function nextBand(
  waiting: ReadonlyMap<string, readonly string[]>,
  next: string,
  firsts: ReadonlyMap<string, readonly string[]>,
  placed: ReadonlySet<string>,
): Pick<Band, "phase" | "steps"> {
  let begun: Pick<Band, "phase" | "steps"> | undefined;
  for (const [phase, left] of waiting) {
    const steps = ready(left, firsts, placed);
    if (left.length > 0 && steps.length === left.length) return { phase, steps };
    if (left.includes(next)) begun = { phase, steps };
  }
  return begun!;
}

/** Those that can be done once all placed ones are, one after the other. */
function ready(
  left: readonly string[],
  firsts: ReadonlyMap<string, readonly string[]>,
  placed: ReadonlySet<string>,
): string[] {
  const taken = new Set<string>();
  for (const step of left)
    if (firsts.get(step)!.every((first) => placed.has(first) || taken.has(first))) taken.add(step);
  return [...taken];
}
