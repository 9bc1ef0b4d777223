/** What the reckoning of time knows of a step. */

export interface TimedStep {
  readonly id: string;
  /** Hands-on minutes. */
  readonly time: number;
  /** Minutes to wait after the step. */
  readonly wait: number;
  /** A safe place to leave off once the step is done. */
  readonly stop: boolean;
}

/**
 * Minutes as whole seconds, in which all is added up: sums of whole numbers are exact, so that equal times compare as equal
 * however they were added.
 */
export const inSeconds = (minutes: number): number => Math.round(minutes * 60);
