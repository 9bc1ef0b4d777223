import { type Answers, type QuizScore, scoreQuiz } from "../engine/quiz/score.ts";
import { pointsWords, shareWords } from "../engine/quiz/score-words.ts";
import { BadInput, type Command, jsonOption, printJson, WrongCall } from "./command.ts";
import { readJson } from "./graph-file.ts";
import { quizOption, readQuizFile } from "./quiz-file.ts";

export const score: Command = {
  name: "score",
  summary: "marks the answers of a sitting, as the page does",
  usage: "--quiz FILE --answers FILE [--json]",
  options: {
    quiz: quizOption,
    answers: {
      type: "string",
      value: "FILE",
      help: 'a JSON file: {"answers": {"<question>": <answer>}}; an answer is an option by its place from 0 or its text, a list of them, a quantity as text, a list of step ids',
    },
    json: jsonOption,
  },
  run(call, output) {
    const { quiz } = readQuizFile(call.text("quiz"));
    const file = call.text("answers");
    if (file === undefined) throw new WrongCall("Say which answers: --answers FILE");
    const scored = scoreQuiz(quiz, answersIn(readJson(file), file));
    if (call.flag("json")) printJson(output, scored);
    else output.out(scoreWords(scored, quiz.pass));
    return 0;
  },
};

/** Reads `{"answers": {...}}`, the map alone, or a list of pairs as a page keeps them. Throws a BadInput for anything else. */
export function answersIn(value: unknown, file: string): Answers {
  const inner = isMap(value) && "answers" in value ? (value as { answers: unknown }).answers : value;
  const entries = Array.isArray(inner) ? inner : isMap(inner) ? Object.entries(inner) : undefined;
  if (entries?.every(isEntry)) return new Map(entries);
  throw new BadInput(`${file}: expected {"answers": {"<question>": <answer>}}`);
}

const isMap = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isEntry = (entry: unknown): entry is [string, unknown] =>
  Array.isArray(entry) && entry.length === 2 && typeof entry[0] === "string";

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
    `${passed ? "Passed" : "Not passed"}: ${pointsWords(points)} of ${pointsWords(max)} points, ${shareWords(fraction)}; the pass mark is ${shareWords(pass)}.`,
    ...rows,
    ...strangers,
    "",
  ].join("\n");
}
