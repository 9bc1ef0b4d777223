/** The quiz as a whole: a sitting from its first answer to its result. */
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";
import type { QuizItem } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element, goTo } from "../page/element.ts";
import { newSeed } from "../page/seed.ts";
import type { Store } from "../page/store.ts";
import { counted, sentence } from "../page/words.ts";
import { QuestionView } from "./question-view.ts";
import { resultView } from "./result-view.ts";
import { keepSitting, newSitting, readSitting, type Sitting } from "./sitting.ts";

export interface QuizOptions {
  readonly form: HTMLFormElement;
  readonly items: readonly QuizItem[];
  readonly pass: number;
  readonly announce: Announce;
  readonly store: Store;
  /** Tells this quiz from what it was before it was changed. */
  readonly fingerprint: string;
}

export class QuizView {
  readonly #options: QuizOptions;
  readonly #quiz: Quiz;
  readonly #questions: readonly QuestionView[];
  readonly #result = element("div", { class: "result-place" });
  readonly #warning: HTMLElement;
  readonly #checkButton: HTMLButtonElement;
  readonly #againButton = button("Sit again", () => this.#sitAgain());
  #sitting: Sitting;

  constructor(options: QuizOptions) {
    const { form, items, pass, store, fingerprint } = options;
    this.#options = options;
    this.#quiz = { pass, questions: items.map(({ question }) => question) };
    this.#questions = items.map((item) => this.#view(item));
    this.#sitting = readSitting(store.load(), fingerprint) ?? newSitting(1, newSeed());
    form.before(this.#result);
    this.#warning = form.querySelector(".warning")!;
    this.#checkButton = form.querySelector("button[type=submit]")!;
    this.#checkButton.after(this.#againButton);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (!this.#isOver()) this.#checkAll();
    });
    this.#keep({});
    this.#begin();
  }

  #view(item: QuizItem): QuestionView {
    const { form, announce } = this.#options;
    const root = [...form.querySelectorAll<HTMLElement>("[data-question]")].find(
      ({ dataset }) => dataset.question === item.question.id,
    )!;
    const view: QuestionView = new QuestionView({
      item,
      root,
      announce,
      changed: () => this.#answered(view),
      check: () => this.#checkOne(view),
    });
    return view;
  }

  #begin(): void {
    const { seed, answers, checked } = this.#sitting;
    for (const view of this.#questions) view.begin(seed, answers.get(view.item.question.id));
    this.#tell(checked);
  }

  #keep(change: Partial<Sitting>): void {
    this.#sitting = { ...this.#sitting, ...change };
    this.#options.store.save(keepSitting(this.#sitting, this.#options.fingerprint));
  }

  #answered({ item, field }: QuestionView): void {
    this.#keep({ answers: new Map([...this.#sitting.answers, [item.question.id, field.read()]]) });
    this.#warning.hidden = true;
  }

  #checkOne(view: QuestionView): void {
    const { answered, problem } = this.#mark(view);
    if (!answered) {
      view.note(
        problem === undefined
          ? "Answer it first."
          : sentence(`This answer can’t be read: found ${problem.found}; expected ${problem.expected}`),
      );
      return;
    }
    this.#close([view]);
    if (this.#isOver()) this.#goToResult();
    else view.focusFeedback();
  }

  /** Asks once before it closes questions that have no answer. */
  #checkAll(): void {
    const open = this.#questions.filter((view) => !this.#mark(view).answered);
    if (open.length > 0 && this.#warning.hidden) {
      const numbers = open.map((view) => this.#questions.indexOf(view) + 1).join(", ");
      this.#warning.textContent = `Without an answer: ${counted(open.length, "question")} (${numbers}). Answer, or press “Check my answers” once more.`;
      this.#warning.hidden = false;
      this.#warning.focus();
      return;
    }
    this.#close(this.#questions);
    this.#goToResult();
  }

  #close(views: readonly QuestionView[]): void {
    const ids = views.map(({ item }) => item.question.id);
    this.#keep({ checked: new Set([...this.#sitting.checked, ...ids]) });
    this.#tell(new Set(ids));
  }

  #tell(ids: ReadonlySet<string>): void {
    for (const view of this.#questions) if (ids.has(view.item.question.id)) view.tell(this.#mark(view));
    this.#warning.hidden = true;
    const over = this.#isOver();
    this.#result.replaceChildren(...(over ? [this.#resultView()] : []));
    this.#checkButton.hidden = over;
    this.#againButton.hidden = !over;
  }

  #isOver(): boolean {
    return this.#questions.every(({ item }) => this.#sitting.checked.has(item.question.id));
  }

  #score() {
    return scoreQuiz(this.#quiz, this.#sitting.answers);
  }

  #mark({ item }: QuestionView) {
    return this.#score().questions.find(({ id }) => id === item.question.id)!;
  }

  #resultView(): HTMLElement {
    return resultView({
      score: this.#score(),
      pass: this.#quiz.pass,
      sitting: this.#sitting.number,
      questions: this.#questions,
      sitAgain: () => this.#sitAgain(),
    });
  }

  #goToResult(): void {
    goTo(this.#result.querySelector("h2")!);
  }

  #sitAgain(): void {
    this.#keep(newSitting(this.#sitting.number + 1, newSeed()));
    this.#begin();
    this.#options.announce(`Sitting ${this.#sitting.number}. All answers are empty again.`);
    goTo(this.#questions[0]!.root);
  }
}
