/** The quiz page. */
import type { QuizData } from "../model/page-data.ts";
import { notingSittings } from "./faults/of-quiz.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { part } from "./page/part.ts";
import { storeAt } from "./page/store.ts";
import { Attempt } from "./quiz/attempt.ts";
import { fingerprint } from "./quiz/fingerprint.ts";
import { papersByLot } from "./quiz/papers.ts";
import { QuizView } from "./quiz/quiz-view.ts";

import { SittingRecord } from "./quiz/sitting-record.ts";
import { recorderHere } from "./record/recorder-global.ts";

const data = pageData<QuizData>();
const form = part.querySelector<HTMLFormElement>("form.quiz");
if (data !== undefined && form !== null && data.items.length > 0) void begin(data, form);

/** With a record, the paper can be drawn only when its owner is known; what was answered before would be lost. */
async function begin(data: QuizData, form: HTMLFormElement): Promise<void> {
  form.inert = true;
  const record = await recordOf(data).finally(() => {
    form.inert = false;
  });
  const print = fingerprint(JSON.stringify([data.items, data.paper]));
  new QuizView({
    form,
    data,
    attempt: new Attempt({
      data,
      store: notingSittings(storeAt(`quiz:${data.module}@${data.revision}`), data, print),
      fingerprint: print,
      papers: record ?? papersByLot,
    }),
    record,
    announce: announcer(),
    pageStore: storeAt(`quiz-page:${data.module}`),
    now: () => Date.now(),
  });
  scriptIsHere();
}

async function recordOf({ record, ...data }: QuizData): Promise<SittingRecord | undefined> {
  const open = recorderHere();
  if (record === undefined || open === undefined) return undefined;
  return SittingRecord.open(await open(record.programme), { ...data, record });
}
