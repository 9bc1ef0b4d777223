/** The sittings of one quiz in competency records, read one file at a time. */
import type { QuizEvent } from "../../engine/competency/event.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import type { Digest } from "../../engine/competency/release.ts";

export interface OfQuiz {
  readonly module: string;
  readonly digest: Digest;
  /** Later sittings of a person count too. */
  readonly all: boolean;
}

interface Picked {
  readonly sittings: readonly QuizEvent[];
  readonly later: number;
  readonly copies: number;
  /** Sittings of the module's quiz under another digest. */
  readonly otherQuiz: number;
}

/**
 * Picks the sittings that count, record after record. A first sitting is one with the number 1, of two (on two devices) the
 * earlier; a person who has handed in several files has one, that of the first file. Whether a sitting counts towards a pass
 * is not asked here: answers are answers. Memory: the owner's key and an id for each sitting that counts.
 */
export class RecordSittings {
  readonly #of: OfQuiz;
  readonly #owners = new Set<string>();
  readonly #seen = new Set<Digest>();

  constructor(of: OfQuiz) {
    this.#of = of;
  }

  /** O(events · log events). */
  pick({ owner, events }: CompetencyRecord): Picked {
    const { module, digest, all } = this.#of;
    const ofModule = events.filter(
      (event): event is QuizEvent => event.kind === "quiz" && event.module === module,
    );
    const ofQuiz = ofModule.filter(({ quiz }) => quiz === digest);
    const fresh = ofQuiz.filter(({ id }) => !this.#seen.has(id)).sort((a, b) => a.attempt - b.attempt);
    for (const { id } of fresh) this.#seen.add(id);
    const first = fresh[0]?.attempt === 1 && !this.#owners.has(owner) ? fresh.slice(0, 1) : [];
    if (first.length > 0) this.#owners.add(owner);
    const sittings = all ? fresh : first;
    return {
      sittings,
      later: fresh.length - sittings.length,
      copies: ofQuiz.length - fresh.length,
      otherQuiz: ofModule.length - ofQuiz.length,
    };
  }
}
