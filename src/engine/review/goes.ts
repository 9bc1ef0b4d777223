/** What a sitting, a practised order and a run on paper come to as goes. */
import type { ExplainedOrder } from "../procedure/explain-order.ts";
import type { Try } from "../procedure/perform.ts";
import type { QuizScore } from "../quiz/score.ts";
import type { Go } from "./faults.ts";

/** Of the questions whose answers were checked; a question is missed where it did not earn everything. O(questions). */
export function goOfSitting({ questions }: QuizScore, checked: ReadonlySet<string>): Go {
  const asked = questions.filter(({ id }) => checked.has(id));
  const missed = asked.filter(({ right }) => !right);
  return {
    asked: asked.map(({ id }) => id),
    missed: missed.map(({ id }) => id),
    critical: missed.filter(({ failedCritical }) => failedCritical).map(({ id }) => id),
  };
}

/**
 * Of an order of steps and the answer to it. Missed are the steps that the fewest moves would put elsewhere, those left out
 * among them, and those that do not belong: each broken pair has one of them at an end, so none goes unmentioned, and a
 * single step that stands too late is one fault and not one for each step before it. `shown` are all steps to choose from.
 */
export function goOfOrder(answer: ExplainedOrder, shown: readonly string[]): Go {
  const amiss = new Set([...answer.fix.map(({ step }) => step), ...answer.extra]);
  const graveEnds = new Set(
    answer.told.filter(({ critical }) => critical).flatMap(({ first, then }) => [first, then]),
  );
  const missed = shown.filter((step) => amiss.has(step));
  return { asked: [...shown], missed, critical: missed.filter((step) => graveEnds.has(step)) };
}

/** Of the steps tried in a run: missed is what was tried too early, critical where the run was stopped. O(tries). */
export function goOfRun(tries: readonly Try[]): Go {
  const steps = (fits: (kind: Try["verdict"]["kind"]) => boolean): string[] => [
    ...new Set(tries.filter(({ verdict }) => fits(verdict.kind)).map(({ step }) => step)),
  ];
  return {
    asked: steps(() => true),
    missed: steps((kind) => kind !== "done"),
    critical: steps((kind) => kind === "stopped"),
  };
}

/** The same go after more of it: what was missed once stays so, however it was mended. O(ids). */
export function joinedGoes(first: Go, then: Go): Go {
  const both = (of: (go: Go) => readonly string[]): string[] => [...new Set([...of(first), ...of(then)])];
  return {
    asked: both(({ asked }) => asked),
    missed: both(({ missed }) => missed),
    critical: both(({ critical }) => critical),
  };
}
