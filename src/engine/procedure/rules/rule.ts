import type { Relations } from "../relations.ts";
import type { Touch } from "../touch.ts";

/**
 * A rule that binds two steps. `a` is touched by the step that stands earlier, `b` by the later one. Gives the reason in
 * words, to be read after "… comes before …, because", or undefined where the rule binds nothing.
 */
export interface Rule {
  readonly name: string;
  readonly binds: string;
  reason(a: Touch, b: Touch, relations: Relations): string | undefined;
}
