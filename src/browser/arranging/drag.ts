/** Dragging a row by its grip: an extra beside buttons and keys, with mouse, pen or finger. */

export interface Dragging {
  mayDrag(): boolean;
  order(): readonly string[];
  move(id: string, to: number): void;
  /** The drag was broken off: everything as before. */
  back(order: readonly string[]): void;
  drop(id: string): void;
}

export function dragRows(list: HTMLElement, dragging: Dragging): void {
  list.addEventListener("pointerdown", (event) => {
    const grip = (event.target as Element).closest<HTMLElement>(".arrange-grip");
    const row = grip?.closest<HTMLElement>(".arrange-row");
    if (!grip || !row || event.button !== 0 || !dragging.mayDrag()) return;
    event.preventDefault();
    drag(list, row, grip, event.pointerId, dragging);
  });
}

function drag(
  list: HTMLElement,
  row: HTMLElement,
  grip: HTMLElement,
  pointer: number,
  dragging: Dragging,
): void {
  const id = row.dataset.step!;
  const before = dragging.order();
  const listening = new AbortController();
  const { signal } = listening;
  const end = (dropped: boolean): void => {
    listening.abort();
    row.classList.remove("is-dragged");
    if (!dropped) dragging.back(before);
    else if (dragging.order() !== before) dragging.drop(id);
  };
  grip.setPointerCapture(pointer);
  row.classList.add("is-dragged");
  grip.addEventListener(
    "pointermove",
    ({ clientY }) => {
      const to = placeAt(list, row, clientY);
      if (to !== dragging.order().indexOf(id)) dragging.move(id, to);
      scrollNear(clientY);
    },
    { signal },
  );
  grip.addEventListener("pointerup", () => end(true), { signal });
  grip.addEventListener("pointercancel", () => end(false), { signal });
  addEventListener("keydown", (event) => event.key === "Escape" && end(false), { signal });
}

/** How many of the other rows lie above the pointer by more than half. */
function placeAt(list: HTMLElement, row: HTMLElement, y: number): number {
  const others = [...list.children].filter((each) => each !== row);
  return others.filter((each) => {
    const { top, height } = each.getBoundingClientRect();
    return top + height / 2 < y;
  }).length;
}

const edge = 60;

/** At the edge of the window the page moves along. */
function scrollNear(y: number): void {
  if (y < edge) scrollBy(0, y - edge);
  else if (y > innerHeight - edge) scrollBy(0, y - innerHeight + edge);
}
