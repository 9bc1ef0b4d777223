/** What a sum of `calc` is. */
import type { Action } from "../actions.ts";
import type { Call, Output } from "../command.ts";

export interface Sum extends Omit<Action, "run"> {
  /** Reckons and prints. `words` are those that follow the name. Throws a WrongCall for what makes no sense. */
  run(call: Call, words: readonly string[], output: Output): void;
}
