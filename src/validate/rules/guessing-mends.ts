/** What would keep someone who guesses from passing a quiz, each remedy tried out. */
import { chanceOf } from "../../engine/quiz/chance.ts";
import { type Paper, paperLength, poolsOf } from "../../engine/quiz/paper.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";

export const percent = (share: number): string => `${Number((share * 100).toPrecision(2))} %`;

/** Remedies that bring the chance to `most` or less, as clauses: a higher mark, a critical question, more questions. */
export function guessingMends(quiz: Quiz, most: number): string[] {
  const brings = ({ words, mended, many = false }: Remedy): string =>
    `${words} ${many ? "bring" : "brings"} it to ${percent(passes(mended))}`;
  const found = [higherMark, criticalQuestion, moreQuestions]
    .map((remedies) => remedies(quiz).find(({ mended }) => passes(mended) <= most))
    .filter((remedy) => remedy !== undefined)
    .map(brings);
  return found.length > 0 ? found : ["many more questions are needed"];
}

interface Remedy {
  readonly words: string;
  readonly mended: Quiz;
  readonly many?: boolean;
}

const passes = (quiz: Quiz): number => chanceOf(quiz)?.pass ?? 1;

const higherMark = (quiz: Quiz): Remedy[] =>
  [0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1]
    .filter((pass) => pass > quiz.pass)
    .map((pass) => ({ words: `a pass mark of ${percent(pass)}`, mended: { ...quiz, pass } }));

const criticalQuestion = (quiz: Quiz): Remedy[] =>
  quiz.questions
    .filter(({ critical }) => !critical)
    .map((chosen) => ({
      words: `"${chosen.id}" as a critical question`,
      mended: {
        ...quiz,
        questions: quiz.questions.map((one) => (one === chosen ? { ...one, critical: true } : one)),
      },
    }));

/** A longer paper from the pool as it is; beyond that, a longer pool of which all is asked. */
function moreQuestions(quiz: Quiz): Remedy[] {
  const longer = longerPapers(quiz);
  return [...longer, ...longerPools(longer.at(-1)?.mended ?? quiz)];
}

function longerPapers(quiz: Quiz): Remedy[] {
  const remedies: Remedy[] = [];
  let paper = quiz.paper && oneLonger(quiz, quiz.paper);
  while (paper !== undefined) {
    const mended = { ...quiz, paper };
    remedies.push({ words: `a paper of ${paperLength(mended)} questions (${paperWords(paper)})`, mended });
    paper = oneLonger(quiz, paper);
  }
  return remedies;
}

const paperWords = (paper: Paper): string =>
  paper.kind === "count"
    ? `paper: ${paper.count}`
    : `paper: {objectives: {${paper.counts.map(({ objective, count }) => `${objective}: ${count}`).join(", ")}}}`;

/** One question more, of the objective that has the most left; undefined where nothing is left. */
function oneLonger({ questions }: Quiz, paper: Paper): Paper | undefined {
  const pools = poolsOf(questions, paper);
  const left = pools.map(({ pool, count }) => pool.length - count);
  const most = Math.max(...left);
  if (most <= 0) return undefined;
  if (paper.kind === "count") return { kind: "count", count: paper.count + 1 };
  const at = left.indexOf(most);
  const counts = paper.counts.map((one, place) => (place === at ? { ...one, count: one.count + 1 } : one));
  return { kind: "objectives", counts };
}

const numbers = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20];

function longerPools(quiz: Quiz): Remedy[] {
  const [first] = quiz.questions;
  if (first === undefined) return [];
  const asked = quiz.paper === undefined ? "" : "all questions of the pool asked, and ";
  return numbers.map((count) => {
    const more = Array.from({ length: count }, (_, number) => ({ ...first, id: `${first.id}-${number}` }));
    const words = count === 1 ? "one more question like the first" : `${count} more questions like the first`;
    return {
      words: asked + words,
      many: count > 1,
      mended: { ...quiz, paper: undefined, questions: [...quiz.questions, ...more] },
    };
  });
}
