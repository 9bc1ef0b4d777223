/** What goes wrong in the sittings of a quiz, as the quiz page keeps them. */

import { drawPaper } from "../../engine/quiz/paper.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";
import { goOfSitting } from "../../engine/review/goes.ts";
import { t } from "../../engine/words.ts";
import type { QuizData } from "../../model/page-data.ts";
import type { Store } from "../page/store.ts";
import { readSitting } from "../quiz/sitting.ts";
import { FaultLog } from "./log.ts";

/** The store of the page's sitting, which notes faults whenever answers were checked. Of a supervised quiz nobody knows any. */
export function notingSittings(store: Store, data: QuizData, fingerprint: string): Store {
  if (data.supervised) return store;
  const { pass, paper: rule, items } = data;
  const pool = { pass, paper: rule, questions: items.map(({ question }) => question) };
  const see = new Map(items.map((item) => [item.question.id, item.see]));
  return {
    load: () => store.load(),
    save(kept) {
      store.save(kept);
      const sitting = readSitting(kept, fingerprint);
      if (sitting === undefined || sitting.checked.size === 0) return;
      const paper = drawPaper(pool, sitting.seed, new Set(sitting.preferred));
      const asks = new Map(paper.questions.map(({ id, ask }) => [id, ask]));
      const log = new FaultLog({
        of: data,
        where: "quiz",
        title: t`Quiz`,
        known: new Set(see.keys()),
        words: (id) => ({ text: asks.get(id) ?? id, see: see.get(id), notes: [] }),
      });
      const go = goOfSitting(scoreQuiz(paper, sitting.answers), sitting.checked);
      log.note(`${sitting.number} ${sitting.seed}`, go);
    },
  };
}
