import { WrongCall } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";

/** The refusal of a module that there is none of, with those that there are. */
export function noSuchModule(id: string, known: Iterable<string>): WrongCall {
  const ids = [...known].sort();
  const all = ids.length === 0 ? "There is none yet." : `There are ${ids.join(", ")}.`;
  return new WrongCall(`There is no module "${id}".${didYouMean(id, ids)} ${all}`);
}
