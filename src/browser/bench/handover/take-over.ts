/** Opening a link that hands a place over: asked once, or refused with the reason. */
import { t } from "../../../engine/words.ts";
import { replaceAddress } from "../../page/address.ts";
import { button, element } from "../../page/element.ts";
import { type Deck, hash } from "../deck.ts";
import { openDialog } from "../dialog.ts";
import type { Keeper } from "../keeper.ts";
import type { Said } from "../said.ts";
import { type Handed, isRefused, type Sheet, unpackPlace } from "./code.ts";
import { refusedWords, takenWords, whatWords } from "./handover-words.ts";
import { packedIn } from "./link.ts";

export interface TakeOver {
  readonly deck: Deck;
  readonly keeper: Keeper;
  readonly said: Said;
  readonly sheet: Sheet;
  readonly clock: () => number;
}

/** Looks at the address now and whenever it changes. */
export function watchForLinks(options: TakeOver): void {
  const look = (): void => {
    const packed = packedIn(hash());
    if (packed === undefined) return;
    // The answer stands: a reload does not ask again.
    replaceAddress(`#${options.deck.card.id}`);
    const answer = unpackPlace(packed, options.sheet);
    if (isRefused(answer)) tell(refusedWords(answer, options.sheet));
    else ask(answer, options);
  };
  addEventListener("hashchange", look);
  look();
}

function tell(words: string): void {
  const close = button(t`Go on with what is here`, () => dialog.close(), { class: "is-main" });
  const dialog = openDialog(
    t`The place is not taken over`,
    () => {},
    element("p", {}, words),
    element("div", { class: "bench-buttons" }, close),
  );
}

function ask(handed: Handed, options: TakeOver): void {
  const { deck, keeper, clock } = options;
  const own = whatWords(deck.cards, keeper);
  let isTaken = false;
  const answer = (takes: boolean): void => {
    isTaken = takes;
    dialog.close();
  };
  const dialog = openDialog(
    t`Take over this place?`,
    () => isTaken && take(handed, options),
    element("p", {}, takenWords(deck.cards, handed, clock())),
    element("p", {}, t`It replaces what is on this device: ${own}.`),
    element(
      "div",
      { class: "bench-buttons" },
      button(t`No, keep mine`, () => answer(false)),
      button(t`Yes, take over`, () => answer(true), { class: "is-main" }),
    ),
  );
}

function take({ place }: Handed, { deck, keeper, said }: TakeOver): void {
  const before = keeper.place;
  const put = (its: typeof place): void => {
    keeper.change(its);
    deck.arrive();
  };
  put(place);
  said.say(t`The place is taken over.`, { act: () => put(before), words: t`All is as it was before.` });
}
