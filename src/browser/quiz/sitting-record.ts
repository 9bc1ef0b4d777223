/** Puts sittings that are over into the record, and draws the next ones from it. */
import type { Json } from "../../engine/competency/json.ts";
import { nextSitting, sittingsOf } from "../../engine/competency/sittings.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import type { QuizData } from "../../model/page-data.ts";
import type { OwnRecord } from "../record/own-record.ts";
import type { Attempt } from "./attempt.ts";
import { type PaperOf, type Papers, papersByLot } from "./papers.ts";
import type { Sitting } from "./sitting.ts";

export type RecordedQuiz = QuizData & { readonly record: NonNullable<QuizData["record"]> };
type Events = Awaited<ReturnType<OwnRecord["held"]>>["record"]["events"];

export class SittingRecord implements Papers {
  readonly own: OwnRecord;
  readonly #data: RecordedQuiz;
  readonly #quiz: Quiz;
  #events: Events;

  private constructor(own: OwnRecord, data: RecordedQuiz, events: Events) {
    const { pass, paper, supervised, items } = data;
    this.own = own;
    this.#data = data;
    this.#quiz = { pass, paper, supervised, questions: items.map(({ question }) => question) };
    this.#events = events;
  }

  static async open(own: OwnRecord, data: RecordedQuiz): Promise<SittingRecord> {
    return new SittingRecord(own, data, (await own.held()).record.events);
  }

  /** Of a supervised quiz the mentor gives what draws the paper; any other follows from the key and the sittings before. */
  next(_: number, preferred: readonly string[]): PaperOf {
    const { digest } = this.#data.record;
    const last = sittingsOf(this.#events, digest).at(-1)?.attempt ?? 0;
    if (this.#data.supervised) return papersByLot.next(last + 1, preferred);
    const { attempt, ...paper } = nextSitting(this.#events, {
      digest,
      quiz: this.#quiz,
      seedOf: this.#seedOf,
    });
    return { number: attempt, ...paper };
  }

  readonly #seedOf = (attempt: number): string => this.own.seedOf(this.#data.record.digest, attempt);

  /** One that is going on must be the next by the record: a copy that was added may have others since. */
  fits(sitting: Sitting): boolean {
    if (sitting.ended !== undefined) return this.#isOfThisKey(sitting);
    const next = this.next(sitting.number, sitting.preferred);
    return next.number === sitting.number && this.#isOfThisKey(sitting);
  }

  #isOfThisKey({ seed, number }: Sitting): boolean {
    return this.#data.supervised || seed === this.#seedOf(number);
  }

  /** Of a sitting that has just come to its end. */
  async add(attempt: Attempt): Promise<void> {
    const { module, revision, supervised, record } = this.#data;
    const { number, seed, preferred } = attempt.sitting;
    const { score, max, passed } = attempt.score();
    const claimed = supervised ? null : { score, max, passed };
    const answers = answersOf(attempt, supervised);
    await this.own.add({
      kind: "quiz",
      ...{ module, revision, quiz: record.digest, attempt: number, seed, preferred, answers, claimed },
    });
    this.#events = (await this.own.held()).record.events;
  }
}

/** In the order of the paper, without those that were not given; of a supervised quiz in words, since its key is elsewhere. */
function answersOf(attempt: Attempt, supervised: boolean): (readonly [string, Json])[] {
  const given = supervised ? attempt.file().answers : attempt.sitting.answers;
  return attempt.paper.questions.flatMap(({ id }) => {
    const answer = given.get(id);
    return answer === undefined ? [] : [[id, answer as Json] as const];
  });
}
