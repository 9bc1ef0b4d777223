/** Which picture a button beside it enlarges. */

const pictures = ".item-stage, img";

/** The nearest before it: a figure with its numbers where it has some. A paragraph may hold several pictures. */
export function shownBefore(button: Element): Element | undefined {
  for (let at = button.previousElementSibling; at !== null; at = at.previousElementSibling) {
    const found = at.matches(pictures) ? at : at.querySelector(pictures);
    if (found !== null) return found;
  }
  return undefined;
}
