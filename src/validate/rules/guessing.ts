/** A quiz must mean something: who guesses must hardly ever pass it. */
import { type Chance, chanceOf, generousGuesses } from "../../engine/quiz/chance.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { remembered } from "../../model/remembered.ts";
import { inFile, type Rule } from "./rule.ts";

/** One time in twenty: common practice. */
const most = 0.05;

export const guessing: Rule = {
  name: "guessing",
  check(content, reporter) {
    for (const quiz of content.quizzes.values()) {
      if (mayPass(quiz.quiz) <= most) continue;
      const chance = chanceOf(quiz.quiz)!;
      if (chance.pass <= most) continue;
      reporter.report(
        "quiz-guessable",
        inFile(content, quiz, ["questions"], "key"),
        `someone who guesses passes with a chance of ${percent(chance.pass)}; ${mends(quiz.quiz).join(", or ")}`,
      );
    }
  },
};

/** No less than the chance; asked again at each rebuild, of quizzes that mostly have not changed. */
const mayPass = remembered((quiz: Quiz): number => chanceOf(quiz, generousGuesses)?.pass ?? 0);

const percent = (share: number): string => `${Number((share * 100).toPrecision(2))} %`;

/** What would bring it under one time in twenty, each tried out. */
function mends(quiz: Quiz): string[] {
  const passes = (other: Quiz): Chance["pass"] => chanceOf(other)?.pass ?? 1;
  const found: string[] = [];
  const mark = [0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1].find(
    (pass) => pass > quiz.pass && passes({ ...quiz, pass }) <= most,
  );
  if (mark !== undefined)
    found.push(`a pass mark of ${percent(mark)} brings it to ${percent(passes({ ...quiz, pass: mark }))}`);
  const critical = quiz.questions.findIndex(
    (question, at) => !question.critical && passes(withCritical(quiz, at)) <= most,
  );
  if (critical >= 0)
    found.push(
      `"${quiz.questions[critical]!.id}" as a critical question brings it to ${percent(passes(withCritical(quiz, critical)))}`,
    );
  const more = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20].find((count) => passes(longer(quiz, count)) <= most);
  found.push(
    more === undefined
      ? "many more questions are needed"
      : `${more === 1 ? "one more question" : `${more} more questions`} like the first ${more === 1 ? "brings" : "bring"} it to ${percent(passes(longer(quiz, more)))}`,
  );
  return found;
}

const withCritical = (quiz: Quiz, at: number): Quiz => ({
  ...quiz,
  questions: quiz.questions.map((question, index) =>
    index === at ? { ...question, critical: true } : question,
  ),
});

function longer(quiz: Quiz, count: number): Quiz {
  const [first] = quiz.questions;
  if (first === undefined) return quiz;
  const more = Array.from({ length: count }, (_, number) => ({ ...first, id: `${first.id}-${number}` }));
  return { ...quiz, questions: [...quiz.questions, ...more] };
}
