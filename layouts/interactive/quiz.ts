/** The quiz page: every question with its fields. Without the script it is a quiz on paper. */

import type { Question, QuestionKind } from "../../src/engine/quiz/kinds.ts";
import { paperLength } from "../../src/engine/quiz/paper.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import { withoutKey } from "../../src/engine/quiz/without-key.ts";
import { askedCase } from "../../src/engine/quiz/worked.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { enlarge, picture } from "../components/picture.ts";
import { frame } from "../frame.ts";
import { type Html, html, join } from "../html.ts";
import { counted, duration, percent } from "../words.ts";
import { answerFields } from "./answer-fields.ts";
import { faultsLine } from "./faults.ts";
import { taskHead } from "./head.ts";
import type { Drawn } from "./point-field.ts";
import { recordedAs, scriptsOf } from "./recorded.ts";
import { seeLink } from "./see.ts";

/** For a module that has a quiz; throws a RangeError for one that has none. */
export function quizPage(view: ModuleView, book: Book): string {
  const { module } = view;
  if (view.quiz === undefined) throw new RangeError(`module ${module.id} has no quiz`);
  const { quiz } = view.quiz;
  const supervised = quiz.supervised === true;
  const from: Address = { kind: "quiz", id: module.id };
  const items = quiz.questions.map((question) =>
    supervised
      ? { question: withoutKey(question), see: undefined }
      : { question, see: seeLink(question.see, view, book, from) },
  );
  const data: QuizData = {
    module: module.id,
    revision: module.revision,
    pass: quiz.pass,
    paper: quiz.paper,
    supervised,
    sitAgain: book.site.programme.sitAgain,
    record: recordedAs(view.release?.quiz?.digest, book.site.programme, from),
    items,
  };
  return frame({
    address: from,
    title: t`Quiz: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: scriptsOf(book.site.programme, "quiz"),
    description: t`${counted(quiz.questions.length, "question")} on “${module.title}”.`,
    data,
    main: html`<div class="sheet task">
${taskHead(module, from, t`Quiz`)}
<p class="paper-head"><span>Name</span><span>Date</span><span>Points</span><span>Marked by</span></p>
<p class="lead">${rules(quiz, data.sitAgain)}</p>
<p class="needs-script">${withoutScript(supervised)}</p>
${form(items, module, drawnOn(book, from))}${supervised ? undefined : [faultsLine(from), keyLine(module, from)]}</div>`,
  });
}

const drawnOn =
  (book: Book, from: Address): Drawn =>
  (figure) => ({ picture: picture(figure, book, from), enlarge: enlarge(figure.file, book, from) });

const withoutScript = (supervised: boolean): string =>
  supervised
    ? t`To hand your answers in as a file, the page needs JavaScript, which is off or has not come. Without it this is a quiz on paper: write on it, and give it to your mentor.`
    : t`To check your answers here, the page needs JavaScript, which is off or has not come. Without it this is a quiz on paper: write on it, and go through it with your mentor.`;

const keyLine = (module: Module, from: Address): Html =>
  html`<p class="for-mentors">For mentors: <a href="${linkTo(from, { kind: "quiz-key", id: module.id })}">the marked key sheet</a>.</p>
`;

function rules(quiz: Quiz, sitAgain: number): string {
  const { pass, questions, paper, supervised } = quiz;
  const points = questions.reduce((sum, question) => sum + question.points, 0);
  const critical = questions.filter((question) => question.critical).length;
  const must = critical === 0 ? "" : t` Questions marked critical (${critical}) must be right as well.`;
  const total =
    paper === undefined
      ? t`${counted(questions.length, "question")}, ${counted(points, "point")} in all.`
      : t`A sitting asks ${paperLength(quiz)} of ${counted(questions.length, "question")}, drawn anew each time.`;
  const again = sitAgain === 0 ? "" : t` After a sitting that was not passed, wait ${duration(sitAgain)}.`;
  const last =
    supervised === true
      ? t` You sit it under a mentor’s eye: the page takes your answers and says nothing about them; hand the file to your mentor.`
      : t` Look things up only after you have answered.`;
  return t`${total} The pass mark is ${percent(pass)}.${must}${again}${last}`;
}

function form(items: QuizData["items"], module: Module, drawn: Drawn): Html {
  const seed = `${module.id}@${module.revision}`;
  return html`<form class="quiz" autocomplete="off">
<ol class="questions">
${items.map(({ question }, at) => item(question, at + 1, seed, drawn))}</ol>
<p class="warning" tabindex="-1" hidden></p>
<div class="actions"><button type="submit" class="is-main" hidden>Check my answers</button></div>
</form>
`;
}

function item(question: Question, number: number, seed: string, drawn: Drawn): Html {
  const { ask } = question.kind === "worked" ? askedCase(question, seed) : question;
  return html`<li class="question" id="question-${number}" data-question="${question.id}">
<fieldset>
<legend><span class="question-number">${number}</span> <span class="question-ask">${ask}</span></legend>
${marks(question)}${answerFields(question, seed, drawn)}</fieldset>
</li>
`;
}

const tasks: Readonly<Record<QuestionKind, string | undefined>> = {
  "choose-one": t`Choose one.`,
  "choose-several": t`Choose all that are right.`,
  number: undefined,
  arrange: t`Put the steps in an order that works.`,
  match: t`Give each its own; each choice belongs to one at most.`,
  text: t`In a word or a few.`,
  point: t`Choose one place.`,
  sort: t`Put each into its group.`,
  worked: undefined,
};

function marks({ kind, critical, points }: Question): Html {
  const parts = [
    tasks[kind],
    critical && html`<strong>Critical: must be right.</strong>`,
    points !== 1 && `${counted(points, "point")}.`,
  ];
  return html`<p class="question-marks">${join(parts, " ")}</p>
`;
}
