/** One question on the page: its field, its button and what is said after it was checked. */
import { kindOf } from "../../engine/quiz/kinds.ts";
import { type Mark, remarksOn } from "../../engine/quiz/score.ts";
import type { QuizItem } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";
import { toldItem } from "../page/told-item.ts";
import { remarkLines, verdictWords } from "./feedback-words.ts";
import type { Field } from "./fields/field.ts";
import { type FieldPlace, fieldOf } from "./fields/fields.ts";
import { rightOrder } from "./right-order.ts";

export interface QuestionOptions extends FieldPlace {
  readonly item: QuizItem;
  /** The trainee wants this one checked. */
  readonly check: () => void;
}

export class QuestionView {
  readonly item: QuizItem;
  readonly root: HTMLElement;
  readonly field: Field;
  readonly #feedback = element("div", { class: "feedback" });
  readonly #check: HTMLButtonElement;

  constructor(options: QuestionOptions) {
    this.item = options.item;
    this.root = options.root;
    this.field = fieldOf(options.item.question, options);
    this.#check = button("Check this answer", options.check);
    this.root.append(element("div", { class: "actions" }, this.#check), this.#feedback);
    this.root.addEventListener("input", options.changed);
  }

  /** Begins a sitting: options drawn anew, the kept answer put back. */
  begin(seed: string, answer: unknown): void {
    this.field.draw(kindOf(this.item.question).shown(this.item.question, seed));
    this.field.write(answer);
    this.#close(false);
    this.#feedback.replaceChildren();
  }

  /** Closes the question and says what there is to say. */
  tell(mark: Mark): void {
    this.#close(true);
    const { question, see } = this.item;
    const answer = this.field.read();
    const lines = remarkLines(question.kind, remarksOn(question, answer), mark.right);
    const again =
      see === undefined
        ? undefined
        : element("p", {}, "Read again: ", element("a", { href: see.href }, see.text), ".");
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

  /** Says something instead of a verdict. */
  note(text: string): void {
    this.#feedback.replaceChildren(element("p", { tabindex: "-1" }, text));
    this.focusFeedback();
  }

  focusFeedback(): void {
    this.#feedback.querySelector("p")?.focus();
  }

  #close(closed: boolean): void {
    this.field.close(closed);
    this.#check.hidden = closed;
    this.root.classList.toggle("is-checked", closed);
  }
}
