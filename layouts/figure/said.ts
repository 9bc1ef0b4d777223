/** What a number says of itself in one line, where one points at it: its name, and where its item comes off and goes back. */
import type { ActKind } from "../../src/engine/procedure/procedure.ts";
import { listed, plural, t } from "../../src/engine/words.ts";
import type { ItemReference } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { itemName, movesOf } from "./list.ts";

/** "16 chuck: taken off in step 3, put back in step 30". The list says the rest. */
export function itemSaid(item: ItemReference, view: ModuleView): string {
  const named = `${item.number} ${itemName(item, view.module)}`;
  if (item.of === undefined) return named;
  const moved = movesOf(item.of, view.steps);
  const told = telling.find((kinds) => moved.some(({ kind }) => kinds.includes(kind))) ?? [];
  const words = moved
    .filter(({ kind }) => told.includes(kind))
    .map(({ kind, steps }) => {
      const numbers = steps.map(({ number }) => String(number));
      return clauses[kind](numbers.length, listed(numbers));
    });
  return `${named}: ${words.length === 0 ? t`left alone` : words.join(", ")}`;
}

/** What tells most is said alone: of a thing that comes off, not that it is cleaned between. */
const telling: readonly (readonly ActKind[])[] = [["remove", "refit"], ["slacken", "tighten"], ["work"]];

const clauses: Readonly<Record<ActKind, (count: number, steps: string) => string>> = {
  slacken: (count, steps) => plural(count, t`slackened in step ${steps}`, t`slackened in steps ${steps}`),
  remove: (count, steps) => plural(count, t`taken off in step ${steps}`, t`taken off in steps ${steps}`),
  work: (count, steps) => plural(count, t`worked on in step ${steps}`, t`worked on in steps ${steps}`),
  refit: (count, steps) => plural(count, t`put back in step ${steps}`, t`put back in steps ${steps}`),
  tighten: (count, steps) => plural(count, t`tightened in step ${steps}`, t`tightened in steps ${steps}`),
};
