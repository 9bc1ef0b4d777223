import { type QuizScore, scoreQuiz } from "../engine/quiz/score.ts";
import { markWords, pointsWords, shareWords } from "../engine/quiz/score-words.ts";
import { answersIn, paperIn, readAnswersText } from "./answers-file.ts";
import { type Call, type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { contentFolder } from "./content.ts";
import { parseJson } from "./graph-file.ts";
import { type HandedIn, isHandedIn, markHandedIn } from "./handed-in.ts";
import { placeOfQuiz, type QuizInHand, quizOption, readQuizFile, readQuizOf } from "./quiz-file.ts";

export const score: Command = {
  name: "score",
  summary: "marks the answers of a sitting, as the page does",
  usage: "--answers FILE [--quiz FILE | --content DIR] [--json]",
  options: {
    answers: {
      type: "string",
      value: "FILE",
      help: 'a sitting that a quiz page saved, or {"answers": {"<question>": <answer>}}: an answer is an option by its place from 0 or its text, a list of them, a quantity as text, a list of step ids; "seed" draws the paper',
    },
    quiz: { ...quizOption, help: `${quizOption.help}; a saved sitting names its own` },
    content: contentOption,
    json: jsonOption,
  },
  run(call, output) {
    const file = call.text("answers");
    if (file === undefined) throw new WrongCall("Say which answers: --answers FILE");
    const named = call.text("quiz");
    if (named !== undefined) placeOfQuiz(named);
    const text = readAnswersText(file);
    const value = parseJson(text, file);
    if (isHandedIn(value)) {
      const marked = markHandedIn(text, file, (module) => quizNamed(call, module));
      if (call.flag("json")) printJson(output, handedInJson(marked));
      else output.out(handedInWords(marked) + scoreWords(marked.score, marked.quiz.quiz.pass));
      return 0;
    }
    const { quiz } = readQuizFile(call.text("quiz"));
    const scored = scoreQuiz(paperIn(value, quiz, file), answersIn(value, file));
    if (call.flag("json")) printJson(output, scored);
    else output.out(scoreWords(scored, quiz.pass));
    return 0;
  },
};

/** The quiz that the call names, else that of the sitting's own module in the content folder. */
function quizNamed(call: Call, module: string): QuizInHand {
  const named = call.text("quiz");
  return named === undefined ? readQuizOf(contentFolder(call), module) : readQuizFile(named);
}

const handedInJson = ({ score: scored, unanswered, sitting }: HandedIn): unknown => {
  const { module, revision, digest, seed } = sitting;
  return { ...scored, unanswered, module, revision, digest, seed };
};

/** What the mentor holds against their own notes: above all the number that drew the paper. */
function handedInWords({ sitting, quiz, paper }: HandedIn): string {
  const { module, revision, seed } = sitting;
  const drawn =
    quiz.quiz.paper === undefined
      ? ""
      : `, ${paper.questions.length} of ${quiz.quiz.questions.length} questions`;
  return `A sitting on ${module}, revision ${revision}, paper ${seed}${drawn}.\n`;
}

function scoreWords(
  { score: points, max, fraction, passed, questions, unknown }: QuizScore,
  pass: number,
): string {
  const rows = questions.map(
    ({ id, score: earned, max: most, answered, failedCritical, problem }) =>
      `  ${id}: ${pointsWords(earned)} of ${pointsWords(most)}${answered ? "" : problem === undefined ? ", not answered" : `, not readable: found ${problem.found}; expected ${problem.expected}`}${failedCritical ? ", critical and not right" : ""}`,
  );
  const strangers = unknown.map((id) => `  ${id}: no question of this quiz; it counts for nothing`);
  return [
    `${passed ? "Passed" : "Not passed"}: ${pointsWords(points)} of ${pointsWords(max)} points, ${shareWords(fraction)}; the pass mark is ${markWords(pass)}.`,
    ...rows,
    ...strangers,
    "",
  ].join("\n");
}
