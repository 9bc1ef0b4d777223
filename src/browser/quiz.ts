/** The quiz page. */
import type { QuizData } from "../model/page-data.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { storeAt } from "./page/store.ts";
import { Attempt } from "./quiz/attempt.ts";
import { fingerprint } from "./quiz/fingerprint.ts";
import { QuizView } from "./quiz/quiz-view.ts";

const data = pageData<QuizData>();
const form = document.querySelector<HTMLFormElement>("form.quiz");
if (data !== undefined && form !== null && data.items.length > 0) {
  new QuizView({
    form,
    data,
    attempt: new Attempt({
      data,
      store: storeAt(`quiz:${data.module}@${data.revision}`),
      fingerprint: fingerprint(JSON.stringify([data.items, data.paper])),
    }),
    announce: announcer(),
    pageStore: storeAt(`quiz-page:${data.module}`),
    now: () => Date.now(),
  });
  scriptIsHere();
}
