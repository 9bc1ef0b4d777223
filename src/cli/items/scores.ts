/** Statistics of scores that stand in a CSV file. */
import { itemStatistics, type QuizStatistics } from "../../engine/quiz/statistics/item-statistics.ts";
import { Moments } from "../../engine/quiz/statistics/moments.ts";
import { PaperMoments } from "../../engine/quiz/statistics/paper-moments.ts";
import { paperStatistics } from "../../engine/quiz/statistics/paper-statistics.ts";
import { readScores, type ScoreTable } from "./read-scores.ts";

interface OfScores {
  readonly statistics: QuizStatistics;
  /** Rows left out. */
  readonly incomplete: number;
}

/** Where they are of `papers`, an empty cell is a question that was not asked. Throws a BadInput as `readScores` does. */
export const statisticsOfScores = (file: string, papers: boolean): Promise<OfScores> =>
  papers ? ofPapers(file) : ofComplete(file);

async function ofComplete(file: string): Promise<OfScores> {
  let moments = new Moments(0);
  const table = await readScores(file, (count) => {
    moments = new Moments(count);
    return (scores) => moments.add(scores);
  });
  return { statistics: itemStatistics(moments, keysOf(table)), incomplete: table.incomplete };
}

/** Reads the file twice: a share of the rest of a paper needs the most that each question can score. */
async function ofPapers(file: string): Promise<OfScores> {
  const table = await readScores(file, () => () => undefined, "not asked");
  const moments = new PaperMoments(table.max);
  await readScores(file, () => (scores) => moments.add(scores), "not asked");
  return { statistics: paperStatistics(moments, keysOf(table)), incomplete: table.incomplete };
}

const keysOf = ({ ids, max, isAllOrNothing }: ScoreTable) =>
  ids.map((id, item) => ({ id, max: max[item]!, isAllOrNothing: isAllOrNothing[item]! }));
