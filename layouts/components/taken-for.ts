import { type ModuleStep, usesIn } from "../../src/model/module.ts";
import type { SubstanceUse } from "../../src/model/sheet.ts";
import type { Book } from "../book.ts";

/** Ids of the substances that a step takes for a purpose. */
export function takenFor(purpose: SubstanceUse, step: ModuleStep, book: Book): string[] {
  return step.substances.filter((id) => {
    const sheet = book.substances.get(id)?.sheet;
    return sheet !== undefined && usesIn(step, sheet).includes(purpose);
  });
}
