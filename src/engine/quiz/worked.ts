import type { Quantity } from "../workshop/quantity.ts";
import { type Asked, type Kind, type QuestionProblem, questionProblem, type Setting } from "./kind.ts";
import { type NumberQuestion, number, numberSetting } from "./number.ts";
import { below, sourceOf } from "./random.ts";
import type { Tolerance } from "./tolerance.ts";

/** A figure to be worked out from those of one case of several. */
export interface WorkedQuestion extends Asked {
  readonly kind: "worked";
  readonly cases: readonly Case[];
  readonly tolerance: Tolerance | undefined;
  /** The place of the case that is asked. */
  readonly chosen: number;
}

export interface Case {
  /** The question with this case's figures in it. */
  readonly ask: string;
  /** As the engine works it out (`sums.ts`). */
  readonly answer: Quantity;
}

/** Answered and judged as a number is, against the case that is asked (`askedCase`). */
export const worked: Kind<WorkedQuestion, Quantity> = {
  read: (question, given) => number.read(numberOf(question), given),
  judge: (question, answer) => number.judge(numberOf(question), answer),
  remarks: (question, answer) => number.remarks(numberOf(question), answer),
  shown: () => [],
};

export const workedSetting: Setting<WorkedQuestion> = {
  problems: problemsOf,
  guesses: (question) => numberSetting.guesses(numberOf(question)),
};

/** The case that a seed asks for, every case equally likely. */
export function askedCase(question: WorkedQuestion, seed: string): WorkedQuestion {
  const chosen = below(question.cases.length, sourceOf(`${seed}/${question.id}/case`));
  return { ...question, chosen, ask: question.cases[chosen]!.ask };
}

function numberOf({ kind: _, cases, chosen, ...asked }: WorkedQuestion): NumberQuestion {
  return { ...asked, kind: "number", answer: cases[chosen]!.answer };
}

/** With one case it is a number question, and whoever sits again knows the answer. */
const fewest = 2;

function problemsOf(question: WorkedQuestion): QuestionProblem[] {
  const { cases } = question;
  const problems: QuestionProblem[] = [];
  if (cases.length < fewest) {
    problems.push(
      questionProblem("too-few-cases", `${cases.length}`, "two cases or more; for one, use number"),
    );
  }
  const first = cases.findIndex(({ ask }, place) =>
    cases.some((other, at) => at < place && other.ask === ask),
  );
  if (first >= 0) {
    problems.push(
      questionProblem("equal-cases", `"${cases[first]!.ask}" twice`, "cases that differ", [first]),
    );
  }
  const [faulty] = cases.flatMap((_, chosen) => numberSetting.problems(numberOf({ ...question, chosen })));
  return faulty === undefined ? problems : [...problems, faulty];
}
