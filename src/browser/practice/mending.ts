/** "Show me": the fewest moves that mend an order, made one at a time. */
import type { Move } from "../../engine/procedure/answer-order.ts";
import type { ArrangeList } from "../arranging/arrange-list.ts";
import { putAfter } from "../arranging/order.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element } from "../page/element.ts";

export interface Mending {
  readonly list: ArrangeList;
  readonly moves: readonly Move[];
  readonly title: (step: string) => string;
  readonly announce: Announce;
  /** All moves are made. */
  readonly done: () => void;
}

/** Says what the next move is, and makes it when the button is pressed; the focus stays on the button until the last. */
export function mendingView({ list, moves, title, announce, done }: Mending): HTMLElement {
  const words = element("p", {});
  let next = 0;
  const tell = (): void => {
    const move = moves[next]!;
    words.textContent = `Move ${next + 1} of ${moves.length}: ${moveWords(move, title)}.`;
    announce(words.textContent);
  };
  const press = button("Next move", () => {
    const move = moves[next]!;
    list.place(putAfter(list.order(), move.step, move.after), move.step);
    next++;
    if (next === moves.length) done();
    else tell();
  });
  tell();
  return element("div", { class: "mending" }, words, press);
}

/** "“Undo the board” goes directly after “Let the spring down”". */
export function moveWords({ step, after }: Move, title: (step: string) => string): string {
  return after === null
    ? `“${title(step)}” goes first`
    : `“${title(step)}” goes directly after “${title(after)}”`;
}
