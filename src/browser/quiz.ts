/** The quiz page. */
import type { QuizData } from "../model/page-data.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { storeAt } from "./page/store.ts";
import { fingerprint } from "./quiz/fingerprint.ts";
import { QuizView } from "./quiz/quiz-view.ts";

const data = pageData<QuizData>();
const form = document.querySelector<HTMLFormElement>("form.quiz");
if (data !== undefined && form !== null && data.items.length > 0) {
  new QuizView({
    form,
    data,
    announce: announcer(),
    store: storeAt(`quiz:${data.module}@${data.revision}`),
    pageStore: storeAt(`quiz-page:${data.module}`),
    fingerprint: fingerprint(JSON.stringify([data.items, data.paper])),
    now: () => Date.now(),
  });
  scriptIsHere();
}
