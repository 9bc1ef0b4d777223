/** Puts sittings that are over into the record. */
import type { Json } from "../../engine/competency/json.ts";
import type { QuizData } from "../../model/page-data.ts";
import type { OwnRecord } from "../record/own-record.ts";
import type { Attempt } from "./attempt.ts";
import type { Seeds } from "./seeds.ts";
import type { Sitting } from "./sitting.ts";

type RecordedQuiz = QuizData & { readonly record: object };

export class SittingRecord {
  readonly own: OwnRecord;
  readonly #data: RecordedQuiz;
  /** How many sittings of this quiz the record has. */
  #sat: number;

  private constructor(own: OwnRecord, data: RecordedQuiz, sat: number) {
    this.own = own;
    this.#data = data;
    this.#sat = sat;
  }

  static async open(own: OwnRecord, data: RecordedQuiz): Promise<SittingRecord> {
    return new SittingRecord(own, data, await own.sittings(data.record.digest));
  }

  /** The paper's seed follows from owner, quiz and number; the number of a supervised one comes from the mentor. */
  seeds({ next, seedOf }: Seeds): Seeds {
    const { supervised, record } = this.#data;
    const seedFor = supervised ? seedOf : (number: number) => this.own.seedOf(record.digest, number);
    const isMine = ({ seed, number }: Sitting): boolean => supervised || seed === seedFor(number);
    const isOpen = ({ number, ended }: Sitting): boolean => ended !== undefined || number > this.#sat;
    return {
      next: (number) => next(Math.max(number, this.#sat + 1)),
      seedOf: seedFor,
      fits: (sitting) => isMine(sitting) && isOpen(sitting),
    };
  }

  /** Of a sitting that has just come to its end. */
  async add(attempt: Attempt): Promise<void> {
    const { module, revision, supervised, record } = this.#data;
    const { number, seed, preferred } = attempt.sitting;
    this.#sat = Math.max(this.#sat, number);
    const { score, max, passed } = attempt.score();
    await this.own.add({
      kind: "quiz",
      module,
      revision,
      quiz: record.digest,
      attempt: number,
      seed,
      preferred,
      answers: answersOf(attempt, supervised),
      claimed: supervised ? null : { score, max, passed },
    });
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
