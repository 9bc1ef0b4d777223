/** A figure to point at, and the list of the same places. The list holds the answer; pointing chooses in it. */

import type { QuestionOf } from "../../../engine/quiz/kinds.ts";
import { edgesOf, placeAt } from "../../../engine/quiz/shape.ts";
import { t } from "../../../engine/words.ts";
import { element } from "../../page/element.ts";
import { choiceField } from "./choice-field.ts";
import type { Field } from "./field.ts";

export function pointField({ places }: QuestionOf<"point">, root: HTMLElement, changed: () => void): Field {
  const figure = root.querySelector<HTMLElement>(".pointing")!;
  const note = root.querySelector<HTMLElement>(".pointing-note")!;
  const mark = element("span", { class: "pointing-mark", hidden: true });
  const list = choiceField(places, root);
  let closed = false;
  figure.append(mark);
  figure.addEventListener("click", (event) => {
    if (closed) return;
    const at = placeAt(
      places.map(({ shape }) => shape),
      spotOf(event, figure),
    );
    if (at === undefined) {
      note.textContent = t`No place of the list lies there. Point again, or choose from the list.`;
      return;
    }
    list.write(at);
    show();
    changed();
  });
  root.addEventListener("change", () => show());

  /** Draws a frame round the chosen place, and says which it is. */
  function show(): void {
    const place = list.read();
    const chosen = typeof place === "number" ? places[place] : undefined;
    mark.hidden = chosen === undefined;
    note.textContent =
      chosen === undefined ? t`Point at the figure, or choose from the list.` : t`Chosen: ${chosen.text}`;
    if (chosen === undefined) return;
    const [left, top, right, bottom] = edgesOf(chosen.shape);
    mark.classList.toggle("is-round", chosen.shape.kind === "circle");
    Object.assign(mark.style, {
      left: `${left}%`,
      top: `${top}%`,
      width: `${right - left}%`,
      height: `${bottom - top}%`,
    });
  }

  return {
    ...list,
    write(answer) {
      list.write(answer);
      show();
    },
    close(now) {
      closed = now;
      list.close(now);
    },
  };
}

/** In percent of the figure. */
function spotOf({ clientX, clientY }: MouseEvent, figure: HTMLElement): { x: number; y: number } {
  const { left, top, width, height } = figure.getBoundingClientRect();
  return { x: ((clientX - left) / width) * 100, y: ((clientY - top) / height) * 100 };
}
