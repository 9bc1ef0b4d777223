import { type OrderAnswer, repeatedSteps } from "../procedure/answer-order.ts";
import { widthOf } from "../procedure/chains.ts";
import { type ExplainedOrder, explainOrder } from "../procedure/explain-order.ts";
import { type Graph, graphOf } from "../procedure/graph.ts";
import type { Precedence } from "../procedure/precedence.ts";
import { t } from "../words.ts";
import { type Guess, tally } from "./guess.ts";
import { longestOrder, ordersByMoves } from "./guess-order.ts";
import {
  type Asked,
  answered,
  isBlank,
  jsonKind,
  type Kind,
  longestList,
  type QuestionProblem,
  questionProblem,
  type Remark,
  type Setting,
  unreadable,
} from "./kind.ts";
import { none, type Ratio, ratio, whole } from "./ratio.ts";
import { shuffle } from "./shuffle.ts";

export interface ArrangeQuestion extends Asked {
  readonly kind: "arrange";
  /** In the written order. */
  readonly steps: readonly { readonly id: string; readonly title: string }[];
  /** The precedence among just these steps (`restrict`), without a cycle. */
  readonly precedence: Precedence;
}

/**
 * Steps to be put in a right order. The answer is ids of steps in the order given. It earns the `score` of the order
 * answer: 1 − moves / worst, no less than 0; a step left out and a foreign one cost a move each. An answer that puts a
 * critical pair the wrong way round fails the question as a critical one.
 */
export const arrange: Kind<ArrangeQuestion, readonly string[]> = {
  read(_question, given) {
    if (isBlank(given)) return { state: "blank" };
    if (!Array.isArray(given)) return unreadable("wrong-kind", jsonKind(given), t`a list of step ids`);
    if (given.length > longestList)
      return unreadable("too-many", t`${given.length} steps`, t`at most ${longestList}`);
    const odd = given.findIndex((step) => typeof step !== "string");
    if (odd >= 0) return unreadable("wrong-kind", jsonKind(given[odd]), t`a step id`);
    const [repeated] = repeatedSteps(given);
    if (repeated !== undefined) return unreadable("repeated-step", t`${repeated} twice`, t`each step once`);
    return answered(given);
  },
  judge(question, answer) {
    const order = orderAnswer(question, answer);
    return { credit: creditFor(order), failsCritical: order.failedCritical };
  },
  remarks(question, answer = []) {
    return answer.length === 0 ? [] : orderRemarks(question, orderAnswer(question, answer));
  },
  shown(question, seed) {
    return startOf(question, seed);
  },
};

export const arrangeSetting: Setting<ArrangeQuestion> = { problems: problemsOf, guesses: guessesOf };

function graphFor({ precedence }: ArrangeQuestion): Graph {
  const { graph } = graphOf(precedence);
  if (graph === null) throw new RangeError("the steps to arrange have no right order");
  return graph;
}

/** Every order equally likely. More steps than a question may have count as one that nobody guesses. */
function guessesOf(question: ArrangeQuestion): Guess[] {
  if (question.steps.length > longestOrder) return [{ credit: none, failsCritical: false, ways: 1n }];
  const graph = graphFor(question);
  const worst = graph.poset.size - widthOf(graph.poset);
  return tally(
    ordersByMoves(graph).map(({ moves, failsCritical, orders }) => ({
      credit: creditFor({ moves, worst }),
      failsCritical,
      ways: BigInt(orders),
    })),
  );
}

/** What there is to tell of an order of the steps. Throws a RangeError where a step is given twice. */
export function orderAnswer(question: ArrangeQuestion, given: readonly string[]): ExplainedOrder {
  const { steps } = question;
  const graph = graphFor(question);
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  return explainOrder(graph, given, (step) => titles.get(step) ?? step);
}

/** `score` of the order answer as an exact fraction. */
function creditFor({ moves, worst }: Pick<OrderAnswer, "moves" | "worst">): Ratio {
  if (worst === 0) return moves === 0 ? whole : none;
  return ratio(Math.max(0, worst - moves), worst);
}

function orderRemarks({ steps }: ArrangeQuestion, order: ExplainedOrder): Remark[] {
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const title = (step: string): string => titles.get(step) ?? step;
  const remark = (verdict: Remark["verdict"], ids: readonly string[], because: string): Remark => ({
    verdict,
    about: ids.map(title),
    because,
  });
  if (order.valid) return [remark("right", order.fixed, "")];
  return [
    ...order.told.map(({ first, then, reasons }) => ({
      ...remark("wrong", [first, then], reasons.join("; ")),
      reasons,
    })),
    ...order.missing.map((step) => remark("missed", [step], "")),
    ...order.extra.map((step) => remark("wrong", [step], "")),
  ];
}

/**
 * A drawn order that is not right already, where any order can be wrong: a right one is turned round, which breaks
 * every pair.
 */
function startOf(question: ArrangeQuestion, seed: string): number[] {
  const drawn = shuffle([...question.steps.keys()], `${seed}/${question.id}`);
  const ids = drawn.map((place) => question.steps[place]!.id);
  return orderAnswer(question, ids).valid ? drawn.toReversed() : drawn;
}

/** Fewer than four steps can be guessed, more than eight can't be kept in view on a phone: common practice. */
const fewest = 4;
const most = 8;

function problemsOf({ steps, precedence }: ArrangeQuestion): QuestionProblem[] {
  const problems: QuestionProblem[] = [];
  const ids = steps.map(({ id }) => id);
  for (const step of repeatedSteps(ids)) {
    const at = [...ids.keys()].filter((place) => ids[place] === step);
    problems.push(questionProblem("repeated-step", `${step} twice`, "each step once", at));
  }
  if (ids.length < fewest) problems.push(questionProblem("too-few-steps", `${ids.length} steps`, "4 to 8"));
  if (ids.length > most) problems.push(questionProblem("too-many-steps", `${ids.length} steps`, "4 to 8"));
  if (precedence.pairs.length === 0) {
    const expected = t`two steps of which one must come before the other`;
    problems.push(questionProblem("cannot-be-wrong", "steps that may stand in any order", expected));
  }
  return problems;
}
