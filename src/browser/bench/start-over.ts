/** Beginning anew with another machine; asked first, and it can be taken back. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import type { Deck } from "./deck.ts";
import type { Keeper } from "./keeper.ts";
import { beginning } from "./place.ts";
import type { Said } from "./said.ts";

export function startOver(deck: Deck, keeper: Keeper, said: Said): HTMLElement {
  const start = (): void => {
    const before = keeper.place;
    keeper.change(beginning(deck.cards[0]!.id));
    deck.arrive();
    said.say(t`Started over: no step is ticked off.`, {
      act: () => {
        keeper.change(before);
        deck.arrive();
      },
      words: t`All is as it was before.`,
    });
  };
  return askFirst(start);
}

function askFirst(start: () => void): HTMLElement {
  const ask = button(t`Start over with another machine`, () => open(true));
  const leave = button(t`No, leave it`, () => open(false));
  const yes = button(t`Yes, start over`, () => {
    open(false);
    start();
  });
  const question = element(
    "div",
    { role: "group", "aria-label": t`Start over?` },
    element("p", {}, t`This takes back every tick, stops every wait and goes to the beginning.`),
    element("div", { class: "bench-buttons" }, leave, yes),
  );
  const open = (asking: boolean): void => {
    ask.hidden = asking;
    question.hidden = !asking;
    (asking ? leave : ask).focus();
  };
  question.hidden = true;
  return element("div", { class: "bench-over" }, ask, question);
}
