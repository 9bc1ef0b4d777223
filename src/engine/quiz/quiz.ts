import type { Question } from "./kinds.ts";
import type { Paper } from "./paper.ts";

export interface Quiz {
  /** The pass mark as a fraction of all points: more than 0, at most 1. */
  readonly pass: number;
  /** Each id once. */
  readonly questions: readonly Question[];
  /** What a sitting draws from the questions; all of them where there is none. */
  readonly paper?: Paper | undefined;
  /** Sat under a mentor's eye: its key is not given away. */
  readonly supervised?: boolean | undefined;
}
