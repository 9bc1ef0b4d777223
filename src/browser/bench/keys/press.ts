/** Does what a key asks for. */
import type { Bar } from "../bar.ts";
import type { Deck } from "../deck.ts";
import type { Device } from "../device.ts";
import { type Deed, deedOf } from "./deeds.ts";

/** A line or two stay in sight when one scrolls by a screenful. */
const kept = 0.8;

export interface Keys {
  readonly deck: Deck;
  readonly bar: Bar;
  readonly device: Device;
  /** Folds what is open; true where something was. */
  readonly fold: () => boolean;
}

export function listenToKeys({ deck, bar, device, fold }: Keys): void {
  const deeds: Readonly<Record<Deed, () => void>> = {
    "turn on": () => deck.turn(1),
    "turn back": () => deck.turn(-1),
    "scroll on": () => scrollBy({ top: heightInSight(deck, bar) * kept }),
    "scroll back": () => scrollBy({ top: -heightInSight(deck, bar) * kept }),
    tick: () => bar.toggle(),
  };
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || document.querySelector("dialog[open]") !== null) return;
    // It may be one of several parts of a document, and not the one that is shown.
    if (deck.card.main.closest("[hidden]") !== null) return;
    if (event.key === "Escape") return void fold();
    if (usesKeys(event.target as Element, event.key)) return;
    const deed = deedOf(event, scrolledTo(deck, bar), device.settings.keys);
    if (deed === undefined) return;
    event.preventDefault();
    // A switch that is held down sends its key again and again; it turns once.
    if (!event.repeat || deed.startsWith("scroll")) deeds[deed]();
  });
}

/** What is fixed hides part of the card: the strip of the tray above, the bar below. */
function scrolledTo(deck: Deck, bar: Bar): { atTop: boolean; atEnd: boolean } {
  const shown = deck.card.elements.map((each) => each.getBoundingClientRect());
  const root = document.documentElement;
  const isAtFoot = scrollY + innerHeight >= root.scrollHeight - 2;
  const end = Math.max(...shown.map(({ bottom }) => bottom));
  const top = Math.min(...shown.map((each) => each.top));
  return { atTop: top >= -2 || scrollY <= 2, atEnd: isAtFoot || end <= floorOf(bar) + 2 };
}

function heightInSight(deck: Deck, bar: Bar): number {
  const tray = deck.card.main.querySelector(".tray-strip")?.getBoundingClientRect().height ?? 0;
  return Math.max(innerHeight / 4, floorOf(bar) - tray);
}

/** Where what is fixed at the foot begins; on a low screen the bar stands at the side and hides nothing. */
function floorOf(bar: Bar): number {
  const fixed = [bar.element, bar.element.previousElementSibling].flatMap((each) =>
    each === null ? [] : [each.getBoundingClientRect()],
  );
  const hiding = fixed.filter(({ width, height }) => height > 0 && width > innerWidth / 2);
  return Math.min(innerHeight, ...hiding.map(({ top }) => top));
}

/** A button, link or box takes Enter and the space bar for itself; a field takes all keys. */
function usesKeys(target: Element, key: string): boolean {
  if (target.matches("input:not([type=checkbox]), textarea, select, [contenteditable]")) return true;
  return (key === " " || key === "Enter") && target.matches("button, a, input, summary");
}
