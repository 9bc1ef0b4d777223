/** What sittings of a quiz come to, one after the other, none of them kept. */
import type { Question } from "../../engine/quiz/kinds.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import type { Answers } from "../../engine/quiz/score.ts";
import type { OptionFacts } from "../../engine/quiz/statistics/advice.ts";
import { itemStatistics, type QuizStatistics } from "../../engine/quiz/statistics/item-statistics.ts";
import { Moments } from "../../engine/quiz/statistics/moments.ts";
import { OptionTally } from "../../engine/quiz/statistics/options.ts";
import { PaperMoments } from "../../engine/quiz/statistics/paper-moments.ts";
import { paperStatistics } from "../../engine/quiz/statistics/paper-statistics.ts";
import { type AnswerMark, Marks, optionsOf } from "./marks.ts";

export class SittingTally {
  readonly #quiz: Quiz;
  readonly #places: ReadonlyMap<string, number>;
  readonly #marks: Marks;
  readonly #scores: Float64Array;
  readonly #moments: Moments | PaperMoments;
  readonly #choices: readonly OptionTally[];
  readonly #inBetween: boolean[];
  /** Of the sitting in hand, by place on its paper. */
  readonly #marked: AnswerMark[] = [];

  constructor(quiz: Quiz) {
    const { questions } = quiz;
    this.#quiz = quiz;
    this.#places = new Map(questions.map(({ id }, item) => [id, item]));
    this.#marks = new Marks(quiz);
    this.#scores = new Float64Array(questions.length);
    this.#moments =
      quiz.paper === undefined
        ? new Moments(questions.length)
        : new PaperMoments(questions.map(({ points }) => points));
    this.#choices = questions.map((question) => new OptionTally(optionsOf(question).length));
    this.#inBetween = questions.map(() => false);
  }

  /** `paper` is the quiz itself, or drawn from it. O(answers). */
  add(paper: Quiz, answers: Pick<Answers, "get">): void {
    const scores = this.#scores.fill(Number.NaN);
    const { questions } = paper;
    let [total, most] = [0, 0];
    for (let at = 0; at < questions.length; at++) {
      const question = questions[at]!;
      const item = paper === this.#quiz ? at : this.#places.get(question.id)!;
      const mark = this.#marks.of(item, question, answers.get(question.id));
      this.#marked[at] = mark;
      scores[item] = mark.score;
      total += mark.score;
      most += question.points;
      if (mark.isInBetween) this.#inBetween[item] = true;
    }
    for (let at = 0; at < questions.length; at++)
      this.#addOptions(questions[at]!, this.#marked[at]!, total, most);
    this.#moments.add(scores);
  }

  #addOptions({ id, points }: Question, { score, places }: AnswerMark, total: number, most: number): void {
    if (places.length === 0) return;
    const rest = most > points ? (total - score) / (most - points) : 0;
    this.#choices[this.#places.get(id)!]!.add(places, rest);
  }

  get count(): number {
    return this.#moments.count;
  }

  /** Expects one sitting or more. */
  statistics(): QuizStatistics {
    const keys = this.#quiz.questions.map(({ id, points }, item) => ({
      id,
      max: points,
      isAllOrNothing: !this.#inBetween[item]!,
    }));
    return this.#moments instanceof PaperMoments
      ? paperStatistics(this.#moments, keys)
      : itemStatistics(this.#moments, keys);
  }

  /** By question; empty where it has no options. */
  options(): OptionFacts[][] {
    return this.#quiz.questions.map((question, item) => {
      const counts = this.#choices[item]!.counts();
      return optionsOf(question).map(({ text, right }, place) => ({ text, right, ...counts[place]! }));
    });
  }
}
