/** Every question can be answered right, and can be answered wrong. */
import type { QuestionCode } from "../../engine/quiz/kind.ts";
import { type QuizCode, questionProblems, quizProblems } from "../../engine/quiz/quiz-problems.ts";
import type { Code } from "../../model/codes.ts";
import type { YamlPath } from "../../model/source.ts";
import { checkLink } from "./links.ts";
import { inFile, type Rule } from "./rule.ts";

interface Row {
  readonly code: Code;
  /** The field of the question at which the fault stands. */
  readonly field: string | undefined;
}

const questionRows: Readonly<Record<QuestionCode, Row>> = {
  "no-right-option": { code: "quiz-no-right", field: "options" },
  "several-right-options": { code: "quiz-many-right", field: "options" },
  "equal-options": { code: "quiz-equal-options", field: "options" },
  "cannot-be-wrong": { code: "quiz-cannot-be-wrong", field: "steps" },
  "no-wrong-option": { code: "quiz-cannot-be-wrong", field: "options" },
  "tolerance-missing": { code: "quiz-tolerance", field: "answer" },
  "tolerance-zero": { code: "quiz-tolerance", field: "tolerance" },
  "tolerance-too-wide": { code: "quiz-tolerance", field: "tolerance" },
  "too-few-options": { code: "quiz-size", field: "options" },
  "too-few-steps": { code: "quiz-size", field: "steps" },
  "too-many-steps": { code: "quiz-size", field: "steps" },
  "repeated-step": { code: "duplicate-id", field: "steps" },
  "wrong-option-without-why": { code: "quiz-no-reason", field: "options" },
  "points-out-of-range": { code: "wrong-type", field: "points" },
};

const quizRows: Readonly<Record<QuizCode, Row>> = {
  "no-questions": { code: "quiz-size", field: undefined },
  "pass-out-of-range": { code: "wrong-unit", field: "pass" },
  "repeated-question": { code: "duplicate-id", field: undefined },
};

const words = ({ found, expected }: { found: string; expected: string }): string =>
  `found ${found}; expected ${expected}`;

export const quizzes: Rule = {
  name: "quizzes",
  check(content, reporter) {
    for (const quiz of content.quizzes.values()) {
      const spot = (path: YamlPath) => inFile(content, quiz, path);
      for (const problem of quizProblems(quiz.quiz)) {
        const { code, field } = quizRows[problem.code];
        const [first, second] = problem.at;
        const other =
          first === undefined
            ? undefined
            : { ...spot(["questions", first, "id"]), message: "the first one stands here" };
        reporter.report(
          code,
          spot(second === undefined ? [field ?? "questions"] : ["questions", second, "id"]),
          words(problem),
          other,
        );
      }
      for (const [index, question] of quiz.quiz.questions.entries()) {
        for (const problem of questionProblems(question)) {
          const { code, field } = questionRows[problem.code];
          const at = problem.at.at(-1);
          reporter.report(
            code,
            spot([
              "questions",
              index,
              ...(field === undefined ? [] : [field]),
              ...(at === undefined ? [] : [at]),
            ]),
            words(problem),
          );
        }
        const source = content.sources.get(`modules/${quiz.module}/module.md`)!;
        checkLink(source, question.see, spot(["questions", index, "see"]), content, reporter);
      }
    }
  },
};
