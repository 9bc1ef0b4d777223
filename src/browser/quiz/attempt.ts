/** The sitting that is going on: its paper, its answers and what they earn. No page. */
import { drawPaper, type PastSitting, preferredAfter } from "../../engine/quiz/paper.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { quizDigest } from "../../engine/quiz/quiz-digest.ts";
import { type ToGoOver, toGoOver } from "../../engine/quiz/review.ts";
import { type Mark, type QuizScore, scoreQuiz } from "../../engine/quiz/score.ts";
import type { SittingFile } from "../../engine/quiz/sitting-file.ts";
import { namedAnswer } from "../../engine/quiz/without-key.ts";
import type { QuizData } from "../../model/page-data.ts";
import type { Store } from "../page/store.ts";
import type { Papers } from "./papers.ts";
import { keepSitting, newSitting, readSitting, type Sitting } from "./sitting.ts";

export interface AttemptOptions {
  readonly data: QuizData;
  readonly store: Store;
  /** Tells this quiz from what it was before it was changed. */
  readonly fingerprint: string;
  readonly papers: Papers;
}

export class Attempt {
  readonly #options: AttemptOptions;
  readonly #pool: Quiz;
  #sitting: Sitting;
  #paper: Quiz;

  constructor(options: AttemptOptions) {
    const { data, store, fingerprint, papers } = options;
    const { pass, paper, supervised, items } = data;
    this.#options = options;
    this.#pool = { pass, paper, supervised, questions: items.map(({ question }) => question) };
    const kept = readSitting(store.load(), fingerprint);
    this.#sitting =
      kept !== undefined && papers.fits(kept) ? kept : newSitting(papers.next(1, []), kept?.earlier);
    this.#paper = this.#draw();
    this.#keep({});
  }

  get sitting(): Sitting {
    return this.#sitting;
  }

  /** The questions of this sitting, in order. */
  get paper(): Quiz {
    return this.#paper;
  }

  #draw(): Quiz {
    return drawPaper(this.#pool, this.#sitting.seed, new Set(this.#sitting.preferred));
  }

  #keep(change: Partial<Sitting>): void {
    this.#sitting = { ...this.#sitting, ...change };
    this.#options.store.save(keepSitting(this.#sitting, this.#options.fingerprint));
  }

  answer(id: string, given: unknown): void {
    this.#keep({ answers: new Map([...this.#sitting.answers, [id, given]]) });
  }

  /** Takes no more answers to these; `now` is when, in milliseconds since 1970. */
  close(ids: readonly string[], now: number): void {
    this.#keep({ checked: new Set([...this.#sitting.checked, ...ids]) });
    if (this.isOver()) this.#keep({ ended: now });
  }

  isOver(): boolean {
    return this.#paper.questions.every(({ id }) => this.#sitting.checked.has(id));
  }

  score(): QuizScore {
    return scoreQuiz(this.#paper, this.#sitting.answers);
  }

  mark(question: string): Mark {
    return this.score().questions.find(({ id }) => id === question)!;
  }

  /** Of a supervised sitting the page knows no more than that it is over. */
  passed(): boolean {
    return !this.#options.data.supervised && this.score().passed;
  }

  /** What to go over after this sitting and those before it. */
  toGoOver(): ToGoOver[] {
    return toGoOver(this.#pool, [...this.#sitting.earlier, this.#past()]);
  }

  /** What came of this sitting; of a supervised one no more than what it asked. */
  #past(): PastSitting {
    const wrong = this.#options.data.supervised ? [] : this.score().questions.filter(({ right }) => !right);
    return { asked: this.#paper.questions.map(({ id }) => id), missed: wrong.map(({ id }) => id) };
  }

  /** As it is handed in: answers in words. */
  file(): SittingFile {
    const { module, revision } = this.#options.data;
    const { seed, preferred, answers } = this.#sitting;
    const named = this.#paper.questions.map(
      (question) => [question.id, namedAnswer(question, answers.get(question.id))] as const,
    );
    const digest = quizDigest(this.#pool);
    return { module, revision, digest, seed, preferred, answers: new Map(named) };
  }

  /** Begins the next sitting. */
  again(): void {
    const all = [...this.#sitting.earlier, this.#past()];
    const preferred = [...preferredAfter(this.#pool, all)];
    this.#keep(newSitting(this.#options.papers.next(this.#sitting.number + 1, preferred), all));
    this.#paper = this.#draw();
  }

  /** Begins this sitting anew with a seed that someone else chose: what was answered is forgotten. */
  reseed(seed: string): void {
    const { number, earlier } = this.#sitting;
    this.#keep(newSitting({ number, seed, preferred: [] }, earlier));
    this.#paper = this.#draw();
  }
}
