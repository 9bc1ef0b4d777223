/** Every question can be answered right, and can be answered wrong. */
import type { QuestionCode } from "../../engine/quiz/kind.ts";
import type { Question } from "../../engine/quiz/kinds.ts";
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
  "too-few-pairs": { code: "quiz-size", field: "pairs" },
  "too-many-pairs": { code: "quiz-size", field: "pairs" },
  "equal-items": { code: "quiz-equal-options", field: undefined },
  "equal-choices": { code: "quiz-equal-options", field: "pairs" },
  "equal-others": { code: "quiz-equal-options", field: "others" },
  "too-few-groups": { code: "quiz-size", field: "groups" },
  "too-few-items": { code: "quiz-size", field: "items" },
  "equal-groups": { code: "quiz-equal-options", field: "groups" },
  "empty-group": { code: "quiz-empty-group", field: "groups" },
  "no-accepted-answer": { code: "quiz-no-right", field: "answers" },
  "equal-answers": { code: "quiz-equal-options", field: "answers" },
  "slips-too-wide": { code: "quiz-slips", field: "slips" },
  "mistake-accepted": { code: "quiz-equal-options", field: "mistakes" },
  "too-few-places": { code: "quiz-size", field: "places" },
  "no-right-place": { code: "quiz-no-right", field: "places" },
  "no-wrong-place": { code: "quiz-cannot-be-wrong", field: "places" },
  "equal-places": { code: "quiz-equal-options", field: "places" },
  "wrong-place-without-why": { code: "quiz-no-reason", field: "places" },
  "place-outside": { code: "quiz-place", field: "places" },
  "places-overlap": { code: "quiz-place", field: "places" },
  "too-few-cases": { code: "quiz-size", field: "cases" },
  "equal-cases": { code: "quiz-equal-options", field: "cases" },
  "points-out-of-range": { code: "wrong-type", field: "points" },
};

const quizRows: Readonly<Record<QuizCode, Row>> = {
  "no-questions": { code: "quiz-size", field: undefined },
  "pass-out-of-range": { code: "wrong-unit", field: "pass" },
  "repeated-question": { code: "duplicate-id", field: undefined },
  "paper-too-long": { code: "quiz-size", field: "paper" },
  "objective-unknown": { code: "quiz-unknown-objective", field: "paper" },
  "never-drawn": { code: "quiz-never-drawn", field: undefined },
};

/** Items of pairs and items to be sorted stand in fields of different names; a worked question has no answer of its own. */
function fieldOf({ kind }: Question, code: QuestionCode): string | undefined {
  if (code === "equal-items") return kind === "match" ? "pairs" : "items";
  if (kind === "worked" && code === "tolerance-missing") return "cases";
  return questionRows[code].field;
}

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
          first === undefined || first === second
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
          const { code } = questionRows[problem.code];
          const field = fieldOf(question, problem.code);
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
