/** What a programme has released, found by what evidence and sign-offs name. */
import type { Graph } from "../procedure/graph.ts";
import { performingGraph } from "../procedure/performing-graph.ts";
import type { PracticeEvent, QuizEvent, RunEvent } from "./event.ts";
import { once } from "./once.ts";
import type {
  AcceptedRevision,
  Digest,
  Release,
  ReleaseCard,
  ReleasedPractice,
  ReleasedQuiz,
} from "./release.ts";
import type { SignOffRules } from "./rules.ts";

/** What was asked for at the time, with its graph where there is one. */
interface Kept {
  readonly quizzes: Map<string, ReleasedQuiz>;
  readonly practices: Map<string, { readonly practice: ReleasedPractice; readonly graph: () => Graph }>;
  readonly runs: Map<string, () => Graph>;
  readonly releases: Map<string, Signable>;
}

/** What a sign-off was made by. */
export interface Signable {
  readonly rules: SignOffRules;
  /** Ids. */
  readonly phases: readonly string[];
  readonly hasQuiz: boolean;
}

/** Evidence on one thing. */
type Named = { readonly module: string; readonly revision: number };

export class Releases {
  /** Each module as it is now. */
  readonly cards: ReadonlyMap<string, ReleaseCard>;
  readonly #kept: Kept = { quizzes: new Map(), practices: new Map(), runs: new Map(), releases: new Map() };

  /**
   * `kept` are releases of any age, the present ones among them as far as answers are to be marked again. Those whose
   * content the programme does not accept for their revision are passed over. Graphs are made when first asked for.
   */
  constructor(cards: readonly ReleaseCard[], kept: readonly Release[]) {
    this.cards = new Map(cards.map((card) => [card.module, card]));
    for (const release of kept) if (this.accepts(release, release.content)) this.#keep(release);
  }

  #keep(release: Release): void {
    const { quizzes, practices, runs, releases } = this.#kept;
    const { quiz, run } = release;
    releases.set(keyOf(release, release.content), signable(release));
    if (quiz !== undefined) quizzes.set(keyOf(release, quiz.digest), quiz);
    if (run !== undefined)
      runs.set(
        keyOf(release, run.digest),
        once(() => performingGraph(run.precedence)),
      );
    for (const practice of release.practices) {
      const graph = once(() => performingGraph(practice.graph));
      practices.set(keyOf(release, practice.digest), { practice, graph });
    }
  }

  /** The row of a module's revision; undefined where the programme knows no such revision. */
  revision({ module, revision }: Named): AcceptedRevision | undefined {
    return this.cards.get(module)?.revisions.find((row) => row.revision === revision);
  }

  /** Whether the programme takes this content for this revision. */
  accepts(named: Named, content: Digest): boolean {
    const card = this.cards.get(named.module);
    if (card?.revision === named.revision && card.content === content) return true;
    return this.revision(named)?.content.includes(content) === true;
  }

  quiz(event: Named & Pick<QuizEvent, "quiz">): ReleasedQuiz | undefined {
    return this.#kept.quizzes.get(keyOf(event, event.quiz));
  }

  practice(event: Named & Pick<PracticeEvent, "graph">) {
    return this.#kept.practices.get(keyOf(event, event.graph));
  }

  run(event: Named & Pick<RunEvent, "graph">): Graph | undefined {
    return this.#kept.runs.get(keyOf(event, event.graph))?.();
  }

  /** The release that a sign-off names, with its rules as they were then; undefined where it is neither kept nor the present one. */
  release(named: Named, content: Digest): Signable | undefined {
    const card = this.cards.get(named.module);
    const isPresent = card?.revision === named.revision && card.content === content;
    return this.#kept.releases.get(keyOf(named, content)) ?? (isPresent ? signable(card) : undefined);
  }
}

const signable = ({ rules, phases, quiz }: Release | ReleaseCard): Signable => ({
  rules,
  phases: phases.map(({ id }) => id),
  hasQuiz: quiz !== undefined,
});

const keyOf = ({ module, revision }: Named, digest: Digest): string => `${digest} ${revision} ${module}`;
