/** The quiz as a whole: a sitting from its first answer to its result. */
import { drawPaper, type PastSitting, preferredAfter } from "../../engine/quiz/paper.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { toGoOver } from "../../engine/quiz/review.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";
import { namedAnswer } from "../../engine/quiz/without-key.ts";
import type { QuizData, QuizItem } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element, goTo } from "../page/element.ts";
import { newSeed } from "../page/seed.ts";
import type { Store } from "../page/store.ts";
import { counted, sentence } from "../page/words.ts";
import { handInView } from "./hand-in.ts";
import { Pager } from "./pager.ts";
import { QuestionView } from "./question-view.ts";
import { resultView } from "./result-view.ts";
import { sitAgainAt, whenWords } from "./sit-again.ts";
import { keepSitting, newSitting, readSitting, type Sitting } from "./sitting.ts";

export interface QuizOptions {
  readonly form: HTMLFormElement;
  readonly data: QuizData;
  readonly announce: Announce;
  readonly store: Store;
  /** Keeps how the page is shown. */
  readonly pageStore: Store;
  /** Tells this quiz from what it was before it was changed. */
  readonly fingerprint: string;
  readonly now: () => number;
}

export class QuizView {
  readonly #options: QuizOptions;
  readonly #pool: Quiz;
  readonly #views: ReadonlyMap<string, QuestionView>;
  readonly #pager: Pager;
  readonly #result = element("div", { class: "result-place" });
  readonly #warning: HTMLElement;
  readonly #checkButton: HTMLButtonElement;
  readonly #againPlace = element("span");
  #sitting: Sitting;
  /** The questions of this sitting, in order. */
  #paper: Quiz;

  constructor(options: QuizOptions) {
    const { form, data, store, fingerprint } = options;
    const { pass, paper, supervised, items } = data;
    this.#options = options;
    this.#pool = { pass, paper, supervised, questions: items.map(({ question }) => question) };
    this.#views = new Map(items.map((item) => [item.question.id, this.#view(item)]));
    this.#sitting = readSitting(store.load(), fingerprint) ?? newSitting(1, newSeed());
    this.#paper = this.#pool;
    this.#pager = new Pager(options.pageStore);
    form.before(this.#result, this.#pager.element);
    this.#warning = form.querySelector(".warning")!;
    this.#checkButton = form.querySelector("button[type=submit]")!;
    this.#checkButton.textContent = this.#checkWords();
    this.#checkButton.after(this.#againPlace);
    this.#warning.before(this.#pager.steps);
    this.#listen();
    this.#keep({});
    this.#begin();
  }

  #listen(): void {
    const { form } = this.#options;
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (!this.#isOver()) this.#checkAll();
    });
    this.#result.addEventListener("click", ({ target }) => {
      const place = target instanceof HTMLAnchorElement ? target.getAttribute("href") : null;
      const root = place?.startsWith("#") ? document.getElementById(place.slice(1)) : null;
      if (root) this.#pager.turnTo(root);
    });
  }

  #view(item: QuizItem): QuestionView {
    const { form, announce, data } = this.#options;
    const root = [...form.querySelectorAll<HTMLElement>("[data-question]")].find(
      ({ dataset }) => dataset.question === item.question.id,
    )!;
    const view: QuestionView = new QuestionView({
      item,
      root,
      announce,
      changed: () => this.#answered(view),
      check: data.supervised ? undefined : () => this.#checkOne(view),
    });
    return view;
  }

  /** Those of this sitting, in the order of the paper. */
  #asked(): QuestionView[] {
    return this.#paper.questions.map(({ id }) => this.#views.get(id)!);
  }

  #begin(from?: number): void {
    const { seed, preferred, answers, checked } = this.#sitting;
    this.#paper = drawPaper(this.#pool, seed, new Set(preferred));
    for (const { root } of this.#views.values()) root.hidden = true;
    for (const [at, question] of this.#paper.questions.entries()) {
      const view = this.#views.get(question.id)!;
      view.root.hidden = false;
      view.begin(question, at + 1, seed, answers.get(question.id));
    }
    this.#pager.page(
      this.#asked().map(({ root }) => root),
      from,
    );
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

  #checkWords(): string {
    return this.#options.data.supervised ? "Close my answers" : "Check my answers";
  }

  /** Asks once before it closes questions that have no answer. */
  #checkAll(): void {
    const asked = this.#asked();
    const open = asked.filter((view) => !this.#mark(view).answered);
    if (open.length > 0 && this.#warning.hidden) {
      const numbers = open.map((view) => asked.indexOf(view) + 1).join(", ");
      this.#warning.textContent = `Without an answer: ${counted(open.length, "question")} (${numbers}). Answer, or press “${this.#checkWords()}” once more.`;
      this.#warning.hidden = false;
      this.#warning.focus();
      return;
    }
    this.#close(asked);
    this.#goToResult();
  }

  #close(views: readonly QuestionView[]): void {
    const ids = views.map(({ item }) => item.question.id);
    this.#keep({ checked: new Set([...this.#sitting.checked, ...ids]) });
    if (this.#isOver()) this.#keep({ ended: this.#options.now() });
    this.#tell(new Set(ids));
  }

  #tell(ids: ReadonlySet<string>): void {
    const { supervised } = this.#options.data;
    for (const view of this.#asked()) {
      if (!ids.has(view.item.question.id)) continue;
      if (supervised) view.handIn();
      else view.tell(this.#mark(view));
    }
    this.#warning.hidden = true;
    const over = this.#isOver();
    this.#result.replaceChildren(...(over ? [this.#resultView()] : []));
    this.#checkButton.hidden = over;
    this.#againPlace.replaceChildren(...(over ? [this.#again()] : []));
  }

  #isOver(): boolean {
    return this.#paper.questions.every(({ id }) => this.#sitting.checked.has(id));
  }

  #score() {
    return scoreQuiz(this.#paper, this.#sitting.answers);
  }

  #mark({ item }: QuestionView) {
    return this.#score().questions.find(({ id }) => id === item.question.id)!;
  }

  /** What came of this sitting; of a supervised one the page knows no more than what it asked. */
  #past(): PastSitting {
    const missed = this.#options.data.supervised ? [] : this.#score().questions.filter(({ right }) => !right);
    return { asked: this.#paper.questions.map(({ id }) => id), missed: missed.map(({ id }) => id) };
  }

  #resultView(): HTMLElement {
    const { data } = this.#options;
    const { number, earlier } = this.#sitting;
    if (data.supervised) return handInView(this.#file(), number, this.#again());
    return resultView({
      score: this.#score(),
      pass: data.pass,
      sitting: number,
      views: this.#views,
      toGoOver: toGoOver(this.#pool, [...earlier, this.#past()]),
      again: this.#again(),
    });
  }

  #file() {
    const { module, revision } = this.#options.data;
    const { seed, preferred, answers } = this.#sitting;
    const named = this.#paper.questions.map(
      (question) => [question.id, namedAnswer(question, answers.get(question.id))] as const,
    );
    return { module, revision, seed, preferred, answers: new Map(named) };
  }

  /** The button to sit again, or from when that may be. */
  #again(): HTMLElement {
    const { data, now } = this.#options;
    const passed = !data.supervised && this.#score().passed;
    const at = sitAgainAt(this.#sitting.ended, passed, data.sitAgain, now());
    if (at === undefined) return button("Sit again", () => this.#sitAgain());
    const { lang } = document.documentElement;
    return element("p", { class: "sit-again-at" }, `You may sit again from ${whenWords(at, lang)}.`);
  }

  #goToResult(): void {
    goTo(this.#result.querySelector("h2")!);
  }

  #sitAgain(): void {
    const { number, earlier } = this.#sitting;
    const all = [...earlier, this.#past()];
    this.#keep(newSitting(number + 1, newSeed(), [...preferredAfter(this.#pool, all)], all));
    this.#begin(0);
    this.#options.announce(`Sitting ${this.#sitting.number}. All answers are empty again.`);
    goTo(this.#asked()[0]!.root);
  }
}
