/** One question on the page: its field, its button and what is said after it was checked. */

import type { Question } from "../../engine/quiz/kinds.ts";
import { type Mark, remarksOn } from "../../engine/quiz/score.ts";
import { shownOrder } from "../../engine/quiz/shown.ts";
import { t } from "../../engine/words.ts";
import type { QuizItem } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";
import { toldItem } from "../page/told-item.ts";
import { remarkLines, verdictWords } from "./feedback-words.ts";
import type { Field } from "./fields/field.ts";
import { type FieldPlace, fieldOf } from "./fields/fields.ts";
import { rightOrder } from "./right-order.ts";

export interface QuestionOptions extends FieldPlace {
  readonly item: QuizItem;
  /** The trainee wants this one checked; undefined where the page checks nothing. */
  readonly check: (() => void) | undefined;
}

export class QuestionView {
  readonly item: QuizItem;
  readonly root: HTMLElement;
  readonly field: Field;
  /** As this sitting asks it. */
  question: Question;
  readonly #feedback = element("div", { class: "feedback" });
  readonly #check: HTMLButtonElement | undefined;

  constructor(options: QuestionOptions) {
    this.item = options.item;
    this.root = options.root;
    this.question = options.item.question;
    this.field = fieldOf(options.item.question, options);
    this.#check = options.check && button(t`Check this answer`, options.check);
    if (this.#check) this.root.append(element("div", { class: "actions" }, this.#check));
    this.root.append(this.#feedback);
    this.root.addEventListener("input", options.changed);
  }

  /** Begins a sitting: options drawn anew, the kept answer put back. `number` is its place on the paper, from 1. */
  begin(question: Question, number: number, seed: string, answer: unknown): void {
    this.question = question;
    this.root.querySelector(".question-ask")!.textContent = question.ask;
    this.root.querySelector(".question-number")!.textContent = String(number);
    this.field.draw(shownOrder(question, seed));
    this.field.write(answer);
    this.#close(false);
    this.#feedback.replaceChildren();
  }

  /** Closes the question and says what there is to say. */
  tell(mark: Mark): void {
    this.#close(true);
    const { question } = this;
    const { see } = this.item;
    const answer = this.field.read();
    const lines = remarkLines(question.kind, remarksOn(question, answer), mark.right);
    const again =
      see === undefined
        ? undefined
        : element("p", {}, t`Read again: `, element("a", { href: see.href }, see.text), ".");
    this.#feedback.replaceChildren(
      element(
        "p",
        { class: mark.right ? "is-right" : "is-wrong", tabindex: "-1" },
        element("strong", {}, verdictWords(mark)),
      ),
      ...(lines.length === 0 ? [] : [element("ul", {}, ...lines.map((line) => toldItem(line)))]),
      ...(mark.right || question.kind !== "arrange" ? [] : rightOrder(question, answer)),
      element("p", {}, question.why),
      ...(again === undefined ? [] : [again]),
    );
  }

  /** Takes no more answers and says nothing of them. */
  handIn(): void {
    this.root.querySelector("fieldset")!.disabled = true;
  }

  /** Says something instead of a verdict. */
  note(text: string): void {
    this.#feedback.replaceChildren(element("p", { tabindex: "-1" }, text));
    this.focusFeedback();
  }

  focusFeedback(): void {
    this.#feedback.querySelector("p")?.focus();
  }

  #close(closed: boolean): void {
    this.root.querySelector("fieldset")!.disabled = false;
    this.field.close(closed);
    if (this.#check) this.#check.hidden = closed;
    this.root.classList.toggle("is-checked", closed);
  }
}
