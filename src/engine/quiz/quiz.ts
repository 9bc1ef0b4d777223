import type { Question } from "./kinds.ts";

export interface Quiz {
  /** The pass mark as a fraction of all points: more than 0, at most 1. */
  readonly pass: number;
  /** Each id once. */
  readonly questions: readonly Question[];
}
