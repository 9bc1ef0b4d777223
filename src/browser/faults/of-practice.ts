/** What goes wrong in a practice: each go is from one shuffling to the next, however often the order is checked in it. */

import type { ExplainedOrder } from "../../engine/procedure/explain-order.ts";
import { goOfOrder } from "../../engine/review/goes.ts";
import { t } from "../../engine/words.ts";
import type { Kept, PracticeTask } from "../../model/page-data.ts";
import { pairWords } from "../page/words.ts";
import { FaultLog } from "./log.ts";

export interface PracticeNotes {
  readonly checked: (answer: ExplainedOrder) => void;
  readonly startedAgain: () => void;
}

export function notesOfPractice({ id, title, steps, mixedIn }: PracticeTask, of: Kept): PracticeNotes {
  const shown = [...steps, ...mixedIn];
  const titles = new Map(shown.map((step) => [step.id, step.title]));
  const titleOf = (step: string): string => titles.get(step) ?? step;
  let answer: ExplainedOrder | undefined;
  const log = new FaultLog({
    of,
    where: `practice:${id}`,
    title: t`${title} (practice)`,
    known: new Set(titles.keys()),
    words: (step) => ({
      text: titleOf(step),
      see: undefined,
      notes: answer === undefined ? [] : notesOn(step, answer, titleOf),
    }),
  });
  let go = Number(log.last() ?? 1);
  return {
    checked(given) {
      answer = given;
      log.note(String(go), goOfOrder(given, [...titles.keys()]));
    },
    startedAgain() {
      go++;
    },
  };
}

function notesOn(step: string, answer: ExplainedOrder, title: (step: string) => string): string[] {
  if (answer.extra.includes(step)) return [t`It does not belong to this job.`];
  if (answer.missing.includes(step)) return [t`It belongs to this job and was left out.`];
  return answer.told
    .filter(({ first, then }) => first === step || then === step)
    .map(({ first, then, reasons }) => pairWords(title(first), title(then), reasons))
    .map(({ text, reasons }) => [text, ...reasons].join(" "));
}
