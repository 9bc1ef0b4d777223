/** What a trainee's own events come to, worked out again by whoever reads them. */

import { answerOrder, repeatedSteps } from "../procedure/answer-order.ts";
import { performSteps } from "../procedure/perform.ts";
import { summaryOf } from "../procedure/run-summary.ts";
import { drawPaper } from "../quiz/paper.ts";
import { scoreQuiz } from "../quiz/score.ts";
import { t } from "../words.ts";
import type { PracticeEvent, QuizEvent, RecordEvent, RunEvent } from "./event.ts";
import { paperSeed } from "./events.ts";
import type { Primitives } from "./primitives.ts";
import { problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import type { Releases } from "./releases.ts";

export type EvidenceEvent = QuizEvent | PracticeEvent | RunEvent;

export const isEvidence = (event: RecordEvent): event is EvidenceEvent =>
  event.kind === "quiz" || event.kind === "practice" || event.kind === "run";

/** What an event comes to. "handed in": a supervised sitting that only someone with the whole quiz can mark. */
export type Verdict =
  | {
      readonly kind: "quiz";
      readonly score: number;
      readonly max: number;
      readonly fraction: number;
      readonly passed: boolean;
      readonly supervised: boolean;
    }
  | { readonly kind: "handed in" }
  | { readonly kind: "practice"; readonly practice: string; readonly right: boolean }
  | { readonly kind: "run"; readonly done: boolean; readonly stops: number };

/** `ok`: the event adds up; only then may it count. */
export type Rescored =
  | { readonly ok: true; readonly verdict: Verdict }
  | { readonly ok: false; readonly problem: RecordProblem };

export interface Rescoring {
  readonly releases: Releases;
  /** The trainee's keys: the record's, and those that it goes on for. */
  readonly keys: ReadonlySet<string>;
  readonly primitives: Pick<Primitives, "sha256">;
}

/** Marks an event again and holds it against what it claims. O(size of the answer and of what was asked). */
export function rescore(event: EvidenceEvent, rescoring: Rescoring): Rescored {
  if (event.kind === "quiz") return rescoreQuiz(event, rescoring);
  return event.kind === "practice"
    ? rescorePractice(event, rescoring.releases)
    : rescoreRun(event, rescoring.releases);
}

function rescoreQuiz(event: QuizEvent, { releases, keys, primitives }: Rescoring): Rescored {
  const released = releases.quiz(event);
  if (released === undefined) return notKept(event, "quiz");
  const { quiz, supervised } = released;
  if (!supervised && !isOwnSeed(event, keys, primitives)) return fault(otherPaper(event));
  if (quiz === undefined) return { ok: true, verdict: { kind: "handed in" } };
  const paper = drawPaper(quiz, event.seed, new Set(event.preferred));
  const { score, max, fraction, passed } = scoreQuiz(paper, new Map(event.answers));
  if (!isClaimed(event.claimed, { score, max, passed }))
    return fault(
      t`The sitting of ${event.module} claims ${claimOf(event)}; marked again it comes to ${pointsOf({ score, max, passed })}. It does not count. Ask the trainee to sit the quiz again.`,
    );
  return { ok: true, verdict: { kind: "quiz", score, max, fraction, passed, supervised } };
}

function isOwnSeed(event: QuizEvent, keys: ReadonlySet<string>, primitives: Rescoring["primitives"]) {
  return [...keys].some((key) => paperSeed(key, event.quiz, event.attempt, primitives) === event.seed);
}

const otherPaper = ({ module, attempt }: QuizEvent): string =>
  t`The paper of sitting ${attempt} of ${module} was not drawn by the seed that follows from the trainee's key, the quiz and the number of the sitting: it was chosen, or it is another person's. It does not count. Ask the trainee to sit the quiz again.`;

type Points = NonNullable<QuizEvent["claimed"]>;

/** A page that claims nothing claims nothing wrong. */
const isClaimed = (claimed: Points | null, found: Points): boolean =>
  claimed === null ||
  (Math.abs(claimed.score - found.score) < 1e-6 &&
    Math.abs(claimed.max - found.max) < 1e-6 &&
    claimed.passed === found.passed);

const claimOf = ({ claimed }: QuizEvent): string => (claimed === null ? t`nothing` : pointsOf(claimed));
const pointsOf = ({ score, max, passed }: Points): string =>
  t`${rounded(score)} of ${rounded(max)} points, ${passed ? t`passed` : t`not passed`}`;
const rounded = (points: number): number => Math.round(points * 100) / 100;

function rescorePractice(event: PracticeEvent, releases: Releases): Rescored {
  const kept = releases.practice(event);
  if (kept === undefined || kept.practice.id !== event.practice) return notKept(event, "practice");
  const { given, claimed, practice } = event;
  const right = repeatedSteps(given).length === 0 && answerOrder(kept.graph(), given).valid;
  if (right !== claimed.right)
    return fault(
      t`The practice ${practice} of ${event.module} claims to be ${inWords(claimed.right)}; looked at again the order is ${inWords(right)}. It does not count. Ask the trainee to do it again.`,
    );
  return { ok: true, verdict: { kind: "practice", practice, right } };
}

const inWords = (right: boolean): string => (right ? t`right` : t`not right`);

function rescoreRun(event: RunEvent, releases: Releases): Rescored {
  const graph = releases.run(event);
  if (graph === undefined) return notKept(event, t`run on paper`);
  const tries = performSteps(graph, event.tried);
  if (tries === undefined)
    return fault(
      t`No run of ${event.module} can be as this one says: it tries a step that there is not, or one that was done before. It does not count. Ask the trainee to do it again.`,
    );
  const { isOver: done, stops } = summaryOf(graph.precedence.steps, tries);
  if (done !== event.claimed.done || stops !== event.claimed.stops)
    return fault(
      t`The run of ${event.module} claims ${runWords(event.claimed)}; looked at again it is ${runWords({ done, stops })}. It does not count. Ask the trainee to do it again.`,
    );
  return { ok: true, verdict: { kind: "run", done, stops } };
}

const runWords = ({ done, stops }: RunEvent["claimed"]): string =>
  t`${done ? t`finished` : t`not finished`} with ${stops} stops`;

const fault = (words: string): Rescored => ({ ok: false, problem: problem("evidence", words) });

const notKept = ({ module, revision }: EvidenceEvent, what: string): Rescored =>
  fault(
    t`The programme keeps no ${what} like this for revision ${revision} of ${module}, so that it can't be marked again. It does not count. Do it again on the site as it is now, or ask for the site that it was done on to be recorded (record release).`,
  );
