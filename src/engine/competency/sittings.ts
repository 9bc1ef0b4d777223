/** The sittings of a quiz one after another: what the next one is, and whether papers were picked. */

import { drawPaper, type PastSitting, preferredAfter } from "../quiz/paper.ts";
import type { Quiz } from "../quiz/quiz.ts";
import { scoreQuiz } from "../quiz/score.ts";
import { t } from "../words.ts";
import type { QuizEvent, RecordEvent } from "./event.ts";
import { grouped } from "./grouped.ts";
import { problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import type { Digest } from "./release.ts";
import type { Releases } from "./releases.ts";

/** The sittings of one quiz, by their number, then as they stand in the record. O(events · log events). */
export const sittingsOf = (events: readonly RecordEvent[], quiz: Digest): QuizEvent[] =>
  events
    .filter((event): event is QuizEvent => event.kind === "quiz" && event.quiz === quiz)
    .sort((a, b) => a.attempt - b.attempt);

export interface NextSitting {
  readonly attempt: number;
  readonly seed: string;
  readonly preferred: readonly string[];
}

/** What the next sitting of a quiz that is not supervised must be, from those in the record; `seedOf` is the owner's `paperSeed`. */
export function nextSitting(
  events: readonly RecordEvent[],
  of: { readonly digest: Digest; readonly quiz: Quiz; seedOf(attempt: number): string },
): NextSitting {
  const sittings = sittingsOf(events, of.digest);
  const attempt = (sittings.at(-1)?.attempt ?? 0) + 1;
  const past = sittings.map((event) => pastOf(event, of.quiz));
  return {
    attempt,
    seed: of.seedOf(attempt),
    preferred: [...preferredAfter(of.quiz, past)],
  };
}

function pastOf({ seed, preferred, answers }: QuizEvent, quiz: Quiz): PastSitting {
  const { questions } = scoreQuiz(drawPaper(quiz, seed, new Set(preferred)), new Map(answers));
  return {
    asked: questions.map(({ id }) => id),
    missed: questions.filter(({ right }) => !right).map(({ id }) => id),
  };
}

/**
 * Sittings whose paper may have been picked, by id: because those before it are not in the record, or because it took questions
 * first that had been right. A number that stands twice is what two devices make; what they prefer can no longer be told
 * from there on, and is let pass. Supervised sittings are a mentor's. O(events · log events + answers).
 */
export function pickedPapers(
  events: readonly RecordEvent[],
  releases: Releases,
): ReadonlyMap<Digest, RecordProblem> {
  const quizzes = grouped(
    events.filter((event): event is QuizEvent => event.kind === "quiz"),
    ({ quiz }) => quiz,
  );
  return new Map([...quizzes.values()].flatMap((sittings) => pickedOf(sittings, releases)));
}

function pickedOf(sittings: QuizEvent[], releases: Releases): [Digest, RecordProblem][] {
  const released = releases.quiz(sittings[0]!);
  const quiz = released?.supervised === false ? released.quiz : undefined;
  if (quiz === undefined) return [];
  const right = new Map<string, boolean>();
  const found: [Digest, RecordProblem][] = [];
  let [last, isDoubled] = [0, false];
  for (const event of sittings.sort((a, b) => a.attempt - b.attempt)) {
    const { attempt, preferred } = event;
    isDoubled ||= attempt === last;
    const picked = attempt === 1 ? preferred.length > 0 : preferred.some((id) => right.get(id) === true);
    if (attempt > last + 1) found.push([event.id, problem("evidence", gap(event, last))]);
    else if (picked && !isDoubled) found.push([event.id, problem("evidence", chosen(event))]);
    const { asked, missed } = pastOf(event, quiz);
    const wrong = new Set(missed);
    for (const id of asked) right.set(id, !wrong.has(id));
    last = attempt;
  }
  return found;
}

const gap = ({ module, attempt }: QuizEvent, last: number): string =>
  t`This is sitting ${attempt} of ${module}, but the record has none between ${last} and it; expected every sitting, since by leaving some out one could choose a paper. It does not count. Bring the other copies of the record together with this one, or sit the quiz again.`;

const chosen = ({ module, attempt }: QuizEvent): string =>
  t`Sitting ${attempt} of ${module} asked first for questions that had been answered rightly, or asked for any at the first sitting; expected those missed or not asked yet. It does not count. Sit the quiz again.`;
