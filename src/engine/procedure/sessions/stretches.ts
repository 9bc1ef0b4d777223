/** The written order cut at every safe place: what has to be done in one go. */
import { inSeconds, type TimedStep } from "./timed-step.ts";

export interface Stretch {
  /** Places of its first and last step in the written order. */
  readonly first: number;
  readonly last: number;
  /** From its beginning to the end of its last step's work: waits between its steps count, the one after it does not. */
  readonly seconds: number;
  /** The wait after its last step, in seconds. */
  readonly wait: number;
}

/** Stretches from one safe place to the next; the end of the procedure is one too. O(steps). */
export function stretchesOf(steps: readonly TimedStep[]): Stretch[] {
  const stretches: Stretch[] = [];
  let first = 0;
  let seconds = 0;
  for (const [place, step] of steps.entries()) {
    seconds += inSeconds(step.time);
    const wait = inSeconds(step.wait);
    if (!step.stop && place < steps.length - 1) {
      seconds += wait;
      continue;
    }
    stretches.push({ first, last: place, seconds, wait });
    first = place + 1;
    seconds = 0;
  }
  return stretches;
}
