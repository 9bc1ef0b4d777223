/** Which keys turn the page. */

export interface Press {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

export interface Scrolled {
  /** Nothing more is hidden above. */
  readonly atTop: boolean;
  readonly atEnd: boolean;
}

/** What is said of the keys on the page. */
export const keyWords =
  "Back and Next turn the page; so do the side arrows of a keyboard. A foot switch that sends Page Down, Enter or space goes to the end of what is shown first, then on; Page Up goes back.";

/**
 * 1 for the next card, −1 for the one before, 0 where the key is left to the browser. The side arrows turn at once; Enter,
 * space and the page keys scroll first, so that nobody turns past a safety message that was still below.
 */
export function turnOf(press: Press, scrolled: Scrolled): number {
  if (press.altKey || press.ctrlKey || press.metaKey) return 0;
  if (press.key === "ArrowRight") return 1;
  if (press.key === "ArrowLeft") return -1;
  const back = press.key === "PageUp" || (press.key === " " && press.shiftKey);
  if (back) return scrolled.atTop ? -1 : 0;
  const on = press.key === "PageDown" || press.key === " " || press.key === "Enter";
  return on && scrolled.atEnd ? 1 : 0;
}
