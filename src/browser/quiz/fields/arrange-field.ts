/** Steps to put in order, in the same list as on the practice page. */

import type { QuestionOf } from "../../../engine/quiz/kinds.ts";
import { t } from "../../../engine/words.ts";
import { ArrangeList } from "../../arranging/arrange-list.ts";
import { readOrder } from "../../arranging/order.ts";
import type { Announce } from "../../page/announcer.ts";
import type { Field } from "./field.ts";

/** Until a step is moved the question counts as not answered: the order drawn is never right. */
export function arrangeField(
  { steps }: QuestionOf<"arrange">,
  root: HTMLElement,
  announce: Announce,
  changed: () => void,
): Field {
  let touched = false;
  const touch = (now: boolean): void => {
    touched = now;
    list.element.classList.toggle("is-as-drawn", !now);
  };
  const list = new ArrangeList({
    label: t`Your order`,
    steps,
    announce,
    changed: () => {
      touch(true);
      changed();
    },
  });
  root.querySelector(".paper-steps")!.replaceWith(list.element);
  return {
    read: () => (touched ? list.order() : undefined),
    write(answer) {
      const order = readOrder(
        answer,
        steps.map(({ id }) => id),
      );
      touch(order !== undefined);
      if (order !== undefined) list.place(order);
    },
    draw: (order) => list.place(order.map((place) => steps[place]!.id)),
    close: (closed) => list.close(closed),
  };
}
