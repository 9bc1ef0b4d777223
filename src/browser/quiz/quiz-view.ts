/** The quiz as a whole on the page: a sitting from its first answer to its result. */
import { language, t } from "../../engine/words.ts";
import type { QuizData, QuizItem } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element, goTo } from "../page/element.ts";
import type { Store } from "../page/store.ts";
import { sentence } from "../page/words.ts";
import { keptLine } from "../record/kept-line.ts";
import type { Attempt } from "./attempt.ts";
import { handInView } from "./hand-in.ts";
import { openWords } from "./open-words.ts";
import { Pager } from "./pager.ts";
import { paperNumber } from "./paper-number.ts";
import { QuestionView } from "./question-view.ts";
import { resultView } from "./result-view.ts";
import { sitAgainAt, whenWords } from "./sit-again.ts";
import type { SittingRecord } from "./sitting-record.ts";

export interface QuizOptions {
  readonly form: HTMLFormElement;
  readonly data: QuizData;
  readonly attempt: Attempt;
  /** Undefined where no record is kept. */
  readonly record: SittingRecord | undefined;
  readonly announce: Announce;
  /** Keeps how the page is shown. */
  readonly pageStore: Store;
  readonly now: () => number;
}

export class QuizView {
  readonly #options: QuizOptions;
  readonly #attempt: Attempt;
  readonly #views: ReadonlyMap<string, QuestionView>;
  readonly #pager: Pager;
  readonly #result = element("div", { class: "result-place" });
  readonly #number = element("div");
  readonly #warning: HTMLElement;
  readonly #checkButton: HTMLButtonElement;
  readonly #againPlace = element("span");
  /** Of the sitting that has just come to its end, until it is in the record. */
  #adding: Promise<void> | undefined;

  constructor(options: QuizOptions) {
    const { form, data, attempt } = options;
    this.#options = options;
    this.#attempt = attempt;
    this.#views = new Map(data.items.map((item) => [item.question.id, this.#view(item)]));
    this.#pager = new Pager(options.pageStore);
    form.before(this.#result, this.#number, this.#pager.element);
    this.#warning = form.querySelector(".warning")!;
    this.#checkButton = form.querySelector("button[type=submit]")!;
    this.#checkButton.textContent = this.#checkWords();
    this.#checkButton.after(this.#againPlace);
    this.#warning.before(this.#pager.steps);
    this.#listen();
    this.#begin();
  }

  #listen(): void {
    this.#options.form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (!this.#attempt.isOver()) this.#checkAll();
    });
    // A link to a question that is away leads nowhere until the pager has turned to it.
    this.#result.addEventListener("click", ({ target }) => {
      const place = target instanceof HTMLAnchorElement ? target.getAttribute("href") : null;
      const root = place?.startsWith("#") ? document.getElementById(place.slice(1)) : null;
      if (root) this.#pager.turnTo(root);
    });
  }

  #view(item: QuizItem): QuestionView {
    const { form, announce, data } = this.#options;
    const { id } = item.question;
    const roots = [...form.querySelectorAll<HTMLElement>("[data-question]")];
    const view: QuestionView = new QuestionView({
      item,
      root: roots.find(({ dataset }) => dataset.question === id)!,
      announce,
      changed: () => {
        this.#attempt.answer(id, view.field.read());
        this.#warning.hidden = true;
      },
      check: data.supervised ? undefined : () => this.#checkOne(view),
    });
    return view;
  }

  /** Those of this sitting, in the order of the paper. */
  #asked(): QuestionView[] {
    return this.#attempt.paper.questions.map(({ id }) => this.#views.get(id)!);
  }

  /** `from` is the place of the question to begin at, where the pager does not know better. */
  #begin(from?: number): void {
    const { seed, answers, checked } = this.#attempt.sitting;
    for (const { root } of this.#views.values()) root.hidden = true;
    for (const [at, question] of this.#attempt.paper.questions.entries()) {
      const view = this.#views.get(question.id)!;
      view.root.hidden = false;
      view.begin(question, at + 1, seed, answers.get(question.id));
    }
    const roots = this.#asked().map(({ root }) => root);
    this.#pager.page(roots, from);
    this.#tell(checked);
  }

  #checkOne(view: QuestionView): void {
    const { answered, problem } = this.#attempt.mark(view.question.id);
    if (!answered) {
      view.note(
        problem === undefined
          ? t`Answer it first.`
          : sentence(t`This answer can’t be read: found ${problem.found}; expected ${problem.expected}`),
      );
      return;
    }
    this.#close([view]);
    if (this.#attempt.isOver()) this.#goToResult();
    else view.focusFeedback();
  }

  #checkWords(): string {
    return this.#options.data.supervised ? t`Close my answers` : t`Check my answers`;
  }

  /** Asks once before it closes questions that have no answer. */
  #checkAll(): void {
    const asked = this.#asked();
    const open = asked
      .map((view, at) => ({ number: at + 1, mark: this.#attempt.mark(view.question.id) }))
      .filter(({ mark }) => !mark.answered);
    if (open.length > 0 && this.#warning.hidden) {
      this.#warning.textContent = openWords(open, this.#checkWords());
      this.#warning.hidden = false;
      this.#warning.focus();
      return;
    }
    this.#close(asked);
    this.#goToResult();
  }

  #close(views: readonly QuestionView[]): void {
    const ids = views.map(({ question }) => question.id);
    this.#attempt.close(ids, this.#options.now());
    this.#adding = this.#attempt.isOver() ? this.#options.record?.add(this.#attempt) : undefined;
    this.#tell(new Set(ids));
  }

  #tell(ids: ReadonlySet<string>): void {
    const { supervised } = this.#options.data;
    for (const view of this.#asked().filter(({ question }) => ids.has(question.id))) {
      if (supervised) view.handIn();
      else view.tell(this.#attempt.mark(view.question.id));
    }
    this.#warning.hidden = true;
    const over = this.#attempt.isOver();
    this.#result.replaceChildren(...(over ? [this.#resultView(), ...this.#keptLine()] : []));
    this.#number.replaceChildren(...(over || !supervised ? [] : [this.#numberField()]));
    this.#checkButton.hidden = over;
    this.#againPlace.replaceChildren(...(over ? [this.#again()] : []));
  }

  #numberField(): HTMLElement {
    return paperNumber(this.#attempt.sitting.seed, (seed) => {
      this.#attempt.reseed(seed);
      this.#begin(0);
      this.#options.announce(t`Paper ${seed}. All answers are empty.`);
      this.#number.querySelector("input")!.focus();
    });
  }

  #resultView(): HTMLElement {
    const { data } = this.#options;
    const { number } = this.#attempt.sitting;
    if (data.supervised) return handInView(this.#attempt.file(), number, this.#again());
    return resultView({
      score: this.#attempt.score(),
      pass: data.pass,
      sitting: number,
      views: this.#views,
      toGoOver: this.#attempt.toGoOver(),
      again: this.#again(),
    });
  }

  /** What the record has of this sitting. */
  #keptLine(): HTMLElement[] {
    const { record, data } = this.#options;
    if (record === undefined || data.record === undefined) return [];
    return [keptLine({ own: record.own, href: data.record.href, adding: this.#adding })];
  }

  /** The button to sit again, or from when that may be. */
  #again(): HTMLElement {
    const { data, now } = this.#options;
    const at = sitAgainAt(this.#attempt.sitting.ended, this.#attempt.passed(), data.sitAgain, now());
    if (at === undefined) return button(t`Sit again`, () => this.#sitAgain());
    return element("p", { class: "sit-again-at" }, t`You may sit again from ${whenWords(at, language)}.`);
  }

  #goToResult(): void {
    goTo(this.#result.querySelector("h2")!);
  }

  #sitAgain(): void {
    this.#attempt.again();
    this.#begin(0);
    this.#options.announce(t`Sitting ${this.#attempt.sitting.number}. All answers are empty again.`);
    goTo(this.#asked()[0]!.root);
  }
}
