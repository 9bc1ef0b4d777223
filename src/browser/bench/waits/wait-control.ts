/** At the end of a step with a wait: starts it, says what is left, stops it. */
import { t } from "../../../engine/words.ts";
import type { BenchWait } from "../../../model/page-data.ts";
import { button, element } from "../../page/element.ts";
import { leftWords } from "./wait-words.ts";
import type { Waits } from "./waits.ts";

export function waitControl(wait: BenchWait, waits: Waits): HTMLElement {
  const words = element("p", {});
  const press = (): void => {
    const timer = running();
    if (timer === undefined) waits.start(wait, act);
    else waits.stop(timer, act);
  };
  const running = () => waits.timers.find(({ step }) => step === wait.step);
  const act = button("", press, { class: "bench-wait-act" });
  const place = element("div", { class: "bench-wait" }, words, act);
  waits.watch(() => {
    const timer = running();
    const { left, clock } = timer === undefined ? { left: 0, clock: "" } : waits.told(timer);
    const isOver = timer !== undefined && left === 0;
    const rest = leftWords(left);
    setText(
      words,
      timer === undefined ? "" : isOver ? t`Over since ${clock}.` : t`${rest} left, until ${clock}.`,
    );
    setText(act, timer === undefined ? startWords(wait) : isOver ? t`Put the timer away` : t`Stop the timer`);
    act.classList.toggle("is-main", timer === undefined);
    place.classList.toggle("is-over", isOver);
  });
  return place;
}

const startWords = ({ words, dries }: BenchWait): string =>
  dries ? t`Start drying: ${words}` : t`Start the wait: ${words}`;

/** A text that stays is not set again, so that nothing is read twice. */
export function setText(target: HTMLElement, text: string): void {
  if (target.textContent !== text) target.textContent = text;
}
