/** The key to a quiz, for the mentor who marks it on paper. A supervised quiz has none on the site. */

import type { Question } from "../../src/engine/quiz/kinds.ts";
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import { linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { counted } from "../words.ts";
import { taskHead } from "./head.ts";
import { rightAnswer } from "./right-answer.ts";
import { seeLink } from "./see.ts";

/** For a module with a quiz that is not supervised; throws a RangeError for any other. */
export function quizKeyPage(view: ModuleView, book: Book): string {
  const { module, quiz } = view;
  if (quiz === undefined || quiz.quiz.supervised === true)
    throw new RangeError(`module ${module.id} has no quiz whose key may be shown`);
  const from: Address = { kind: "quiz-key", id: module.id };
  const { questions, paper } = quiz.quiz;
  return frame({
    address: from,
    title: t`Key: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: [],
    description: t`The right answers to the quiz on “${module.title}”.`,
    main: html`<div class="sheet task">
${taskHead(module, from, t`Key to the quiz`)}
<p class="lead">For the mentor who marks <a href="${linkTo(from, { kind: "quiz", id: module.id })}">the quiz</a> on paper: ${counted(questions.length, "question")} in the order in which they are printed there. Options may stand there in another order.${paper === undefined ? "" : t` A paper that was drawn numbers its questions anew: go by what is asked.`}</p>
<ol class="questions">
${questions.map((question, at) => item(question, at + 1, view, book, from))}</ol></div>`,
  });
}

function item(question: Question, number: number, view: ModuleView, book: Book, from: Address): Html {
  const see = seeLink(question.see, view, book, from);
  return html`<li class="question" id="question-${number}">
<h2 class="question-title"><span class="question-number">${number}</span> ${question.ask}</h2>
<p class="question-marks">${counted(question.points, "point")}${question.critical ? html`. <strong>Critical: must be right.</strong>` : "."}</p>
${rightAnswer(question)}<p>${question.why}${see === undefined ? undefined : html` Read again: <a href="${see.href}">${see.text}</a>.`}</p>
</li>
`;
}
