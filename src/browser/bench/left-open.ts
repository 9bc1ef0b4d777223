/** On the last card: which steps and checks were not ticked off. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import type { Card } from "./cards.ts";
import type { Keeper } from "./keeper.ts";
import { stepsOf } from "./progress.ts";

export function leftOpen(cards: readonly Card[], checks: ReadonlySet<string>, keeper: Keeper): HTMLElement {
  const place = element("div", { class: "bench-left" });
  const steps = stepsOf(cards);
  keeper.watch(({ done, checked }) => {
    const open = steps.filter(({ id }) => !done.has(id));
    const unseen = steps.filter(({ id }) => checks.has(id) && !checked.has(id));
    place.replaceChildren(
      ...(open.length === 0
        ? [element("p", {}, t`Every step is ticked off.`)]
        : listOf(t`Not ticked off`, open)),
      ...(unseen.length === 0 ? [] : listOf(t`Checks not ticked`, unseen)),
    );
  });
  return place;
}

const listOf = (title: string, cards: readonly Card[]): HTMLElement[] => [
  element("h2", {}, title),
  element(
    "ul",
    {},
    ...cards.map(({ id, title: step }) => element("li", {}, element("a", { href: `#${id}` }, step))),
  ),
];
