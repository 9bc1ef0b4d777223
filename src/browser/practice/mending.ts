/** "Show me": the fewest moves that mend an order, made one at a time. */

import type { Move } from "../../engine/procedure/answer-order.ts";
import { t } from "../../engine/words.ts";
import { moveWords } from "../arranging/move-words.ts";
import { putAfter } from "../arranging/order.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element } from "../page/element.ts";

/** What shows an order and can show another. */
export interface Mendable {
  order(): readonly string[];
  place(order: readonly string[], moved?: string): void;
}

export interface Mending {
  readonly list: Mendable;
  /** Steps that are to be left out, which is done first. */
  readonly leaveOut: readonly string[];
  readonly moves: readonly Move[];
  readonly title: (step: string) => string;
  readonly announce: Announce;
  /** All moves are made. */
  readonly done: () => void;
}

/** Says which move is to be made next, and makes it when the button is pressed; the focus stays on the button until the last. */
export function mendingView(mending: Mending): HTMLElement {
  const { announce, done } = mending;
  const words = element("p", {});
  const changes = changesOf(mending);
  let next = 0;
  const tell = (): void => {
    words.textContent = t`To do, move ${next + 1} of ${changes.length}: ${changes[next]!.says}.`;
    announce(words.textContent);
  };
  const press = button(t`Do this move`, () => {
    changes[next]!.make();
    next++;
    if (next === changes.length) done();
    else tell();
  });
  tell();
  return element("div", { class: "mending" }, words, press);
}

interface Change {
  readonly says: string;
  make(): void;
}

function changesOf({ list, leaveOut, moves, title }: Mending): Change[] {
  return [
    ...leaveOut.map((step) => ({
      says: t`“${title(step)}” does not belong to this job`,
      make: () => list.place(list.order().filter((each) => each !== step)),
    })),
    ...moves.map((move) => ({
      says: moveWords(move, title),
      make: () => list.place(putAfter(list.order(), move.step, move.after), move.step),
    })),
  ];
}
