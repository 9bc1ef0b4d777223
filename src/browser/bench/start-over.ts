/** Beginning anew with another machine; asked twice, for the ticks are lost. */
import { button, element } from "../page/element.ts";

/** A button that asks, and calls `start` when that is answered with yes. */
export function startOver(start: () => void): HTMLElement {
  const ask = button("Start over with another machine", () => open(true));
  const leave = button("No, leave it", () => open(false));
  const yes = button("Yes, start over", () => {
    open(false);
    start();
  });
  const question = element(
    "div",
    { role: "group", "aria-label": "Start over?" },
    element("p", {}, "This takes back every tick and goes to the beginning."),
    leave,
    " ",
    yes,
  );
  const open = (asking: boolean): void => {
    ask.hidden = asking;
    question.hidden = !asking;
    (asking ? leave : ask).focus();
  };
  question.hidden = true;
  return element("div", { class: "bench-over" }, ask, question);
}
