/** A quiz must mean something: who guesses must hardly ever pass it. */
import { chanceOf, generousGuesses } from "../../engine/quiz/chance.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { remembered } from "../../model/remembered.ts";
import { guessingMends, percent } from "./guessing-mends.ts";
import { inFile, type Rule } from "./rule.ts";

/** One time in twenty: common practice. */
const most = 0.05;

export const guessing: Rule = {
  name: "guessing",
  check(content, reporter) {
    for (const quiz of content.quizzes.values()) {
      if (mayPass(quiz.quiz) <= most) continue;
      const chance = chanceOf(quiz.quiz);
      if (chance === undefined || chance.pass <= most) continue;
      reporter.report(
        "quiz-guessable",
        inFile(content, quiz, ["questions"], "key"),
        `someone who guesses passes ${drawnWords(quiz.quiz)}with a chance of ${percent(chance.pass)}; ${guessingMends(quiz.quiz, most).join(", or ")}`,
      );
    }
  },
};

const drawnWords = ({ paper }: Quiz): string => (paper === undefined ? "" : "a paper drawn from it ");

/** No less than the chance; asked again at each rebuild, of quizzes that mostly have not changed. */
const mayPass = remembered((quiz: Quiz): number => chanceOf(quiz, generousGuesses)?.pass ?? 0);
