/** The check of each step as a box of its own. */
import { element } from "../page/element.ts";
import type { Card } from "./cards.ts";
import type { Keeper } from "./keeper.ts";
import { withId } from "./place.ts";

/** Puts a box before what is to be seen, which becomes its label. Gives the ids of the steps that have one. */
export function tickableChecks(cards: readonly Card[], keeper: Keeper): ReadonlySet<string> {
  const boxes = new Map<string, HTMLInputElement>();
  for (const { id, main, isStep } of cards) {
    const text = isStep ? main.querySelector(".lines > .check > dd") : null;
    if (text === null) continue;
    const box = element("input", { type: "checkbox" });
    box.addEventListener("change", () =>
      keeper.change({ checked: withId(keeper.place.checked, id, box.checked) }),
    );
    const words = element("span", {}, ...text.childNodes);
    text.replaceChildren(element("label", { class: "bench-check" }, box, words));
    boxes.set(id, box);
  }
  keeper.watch(({ checked }) => {
    for (const [id, box] of boxes) box.checked = checked.has(id);
  });
  return new Set(boxes.keys());
}
