/** How figures were reckoned from papers that ask different questions, in words. */
import { smallSample } from "./advice.ts";
import type { ItemStatistics, PaperFacts, QuizStatistics } from "./item-statistics.ts";
import type { NoAlpha } from "./pairwise-alpha.ts";

const noAlpha: Readonly<Record<NoAlpha, string>> = {
  "too-few-questions": "fewer than two questions were asked twice or more",
  "never-together": "no two questions were asked together of two people or more",
  "no-variance": "nobody did better than anybody else",
  "does-not-fit":
    "the covariances are those of different people, and here they do not fit together: too few were asked the same questions",
};

/** Sentences; none where all sittings asked all questions. Of few sittings `sampleWords` says that they are few. */
export function paperWords({ papers, alpha, items, persons }: QuizStatistics): string[] {
  if (papers === undefined) return [];
  return [
    `Each sitting asked some of the questions, ${rounded(papers.length)} on the average: a question that was not asked counts as neither right nor missed. Difficulty is over those who were asked it, discrimination the correlation with the share of points earned on the rest of the person's own paper.`,
    alpha === null
      ? `There is no alpha: ${noAlpha[papers.noAlpha!]}.`
      : `Alpha is reckoned from the covariances of each two questions over those who were asked both (pairwise deletion), as if all ${papers.questions} questions were asked; of a paper of ${rounded(papers.length)} it is ${papers.alpha === null ? "not known" : papers.alpha.toFixed(2)} (Spearman and Brown).${apart(papers)}`,
    ...(persons < smallSample ? [] : fewAsked(items)),
  ];
}

const rounded = (value: number): string => String(Math.round(value * 10) / 10);

const apart = ({ pairs, apart: never }: PaperFacts): string =>
  never === 0
    ? ""
    : ` Of its ${pairs} pairs of questions ${never} were asked together of fewer than two people; the mean covariance of the others stands for theirs.`;

function fewAsked(items: readonly ItemStatistics[]): string[] {
  const few = items.filter(({ asked }) => asked > 0 && asked < smallSample);
  if (few.length === 0) return [];
  const names = few.map(({ id }) => id).join(", ");
  return [
    `Asked fewer than ${smallSample} times each, so that what is said of them may be chance: ${names}.`,
  ];
}
