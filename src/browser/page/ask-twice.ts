/** A button whose deed can't be undone: it asks before it does it. */
import { button, element } from "./element.ts";

export interface AskTwice {
  readonly text: string;
  /** What would be lost, as a sentence; undefined where nothing would be: then nothing is asked. */
  readonly loss: () => string | undefined;
  /** On the buttons that do it and that leave it. */
  readonly yes: string;
  readonly no: string;
  readonly act: () => void;
}

/** The focus goes to the question, and back to the button where it is left. */
export function askTwice({ text, loss, yes, no, act }: AskTwice): HTMLElement {
  const place = element("div", { class: "ask-twice" });
  const first = button(text, () => {
    const lost = loss();
    if (lost === undefined) act();
    else ask(lost);
  });
  const leave = (): void => place.replaceChildren(first);
  const ask = (lost: string): void => {
    const question = element("p", { class: "warning", tabindex: "-1" }, lost);
    const does = button(yes, () => {
      leave();
      act();
    });
    const leaves = button(no, () => {
      leave();
      first.focus();
    });
    place.replaceChildren(question, element("div", { class: "actions" }, leaves, does));
    question.focus();
  };
  leave();
  return place;
}
