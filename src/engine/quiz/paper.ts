/** The questions of one sitting, drawn from the pool by its seed; whoever has the seed draws the same again. */
import type { Question } from "./kinds.ts";
import type { Quiz } from "./quiz.ts";
import { shuffle } from "./shuffle.ts";
import { askedCase } from "./worked.ts";

/** How many questions are drawn: of the whole pool, or of each objective named. */
export type Paper =
  | { readonly kind: "count"; readonly count: number }
  | {
      readonly kind: "objectives";
      readonly counts: readonly { readonly objective: string; readonly count: number }[];
    };

/** What came of an earlier sitting, by the ids of its questions. */
export interface PastSitting {
  readonly asked: readonly string[];
  readonly missed: readonly string[];
}

/**
 * The quiz of one sitting, in the written order; the whole pool where the quiz draws no paper. Each question of a pool is
 * as likely as any other, but that `preferred` ones come first. Worked questions ask the case that the seed draws.
 * O(n log n).
 */
export function drawPaper(quiz: Quiz, seed: string, preferred: ReadonlySet<string> = new Set()): Quiz {
  const drawn = drawnIds(quiz, seed, preferred);
  const questions = quiz.questions.filter(({ id }) => drawn.has(id));
  return {
    ...quiz,
    questions: questions.map((one) => (one.kind === "worked" ? askedCase(one, seed) : one)),
  };
}

function drawnIds({ questions, paper }: Quiz, seed: string, preferred: ReadonlySet<string>): Set<string> {
  if (paper === undefined) return new Set(questions.map(({ id }) => id));
  return new Set(
    poolsOf(questions, paper).flatMap(({ name, pool, count }) => {
      const drawn = shuffle(pool, `${seed}/paper/${name}`);
      const first = drawn.filter(({ id }) => preferred.has(id));
      const rest = drawn.filter(({ id }) => !preferred.has(id));
      return [...first, ...rest].slice(0, count).map(({ id }) => id);
    }),
  );
}

interface Pool {
  readonly name: string;
  readonly pool: readonly Question[];
  readonly count: number;
}

/** What is drawn from what; "" names the whole pool. */
export function poolsOf(questions: readonly Question[], paper: Paper): Pool[] {
  if (paper.kind === "count") return [{ name: "", pool: questions, count: paper.count }];
  return paper.counts.map(({ objective, count }) => ({
    name: objective,
    pool: questions.filter((question) => question.objective === objective),
    count,
  }));
}

/** How many questions a paper has. */
export function paperLength({ questions, paper }: Quiz): number {
  if (paper === undefined) return questions.length;
  return poolsOf(questions, paper).reduce((sum, { pool, count }) => sum + Math.min(count, pool.length), 0);
}

/** For the next sitting: what was missed when it was last asked, and what was not asked yet. Nothing on the first. */
export function preferredAfter({ questions }: Quiz, earlier: readonly PastSitting[]): Set<string> {
  if (earlier.length === 0) return new Set();
  const wasRight = new Map<string, boolean>();
  for (const { asked, missed } of earlier) {
    const wrong = new Set(missed);
    for (const id of asked) wasRight.set(id, !wrong.has(id));
  }
  return new Set(questions.map(({ id }) => id).filter((id) => wasRight.get(id) !== true));
}
