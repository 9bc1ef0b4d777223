/** What a sum of `calc` is. */
import type { Call, Command, Output } from "../command.ts";

export interface Sum {
  readonly name: string;
  readonly summary: string;
  /** What follows the name. */
  readonly usage: string;
  readonly options: Command["options"];
  /** How many words without an option may follow its name. */
  readonly words: number;
  /** Reckons and prints. `words` are those that follow the name. Throws a WrongCall for what makes no sense. */
  run(call: Call, words: readonly string[], output: Output): void;
}
