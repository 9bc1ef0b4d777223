/** The quiz page: every question with its fields. Without the script it is a quiz on paper. */
import type { Question, QuestionKind } from "../../src/engine/quiz/kinds.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import type { Address } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { QuizData } from "../../src/model/page-data.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html, join } from "../html.ts";
import { counted } from "../words.ts";
import { answerFields } from "./answer-fields.ts";
import { taskHead } from "./head.ts";
import { seeLink } from "./see.ts";

/** For a module that has a quiz; throws a RangeError for one that has none. */
export function quizPage(view: ModuleView, book: Book): string {
  const { module } = view;
  if (view.quiz === undefined) throw new RangeError(`module ${module.id} has no quiz`);
  const { quiz } = view.quiz;
  const from: Address = { kind: "quiz", id: module.id };
  const data: QuizData = {
    module: module.id,
    revision: module.revision,
    pass: quiz.pass,
    items: quiz.questions.map((question) => ({ question, see: seeLink(question.see, view, book, from) })),
  };
  return frame({
    address: from,
    title: `Quiz: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: ["quiz"],
    description: `${counted(quiz.questions.length, "question")} on “${module.title}”.`,
    data,
    main: html`<div class="sheet task">
${taskHead(module, from, "Quiz")}
<p class="lead">${rules(quiz)}</p>
<p class="needs-script">To check your answers here, the page needs JavaScript, which is off or has not come. Without it this is a quiz on paper: write on it, and go through it with your mentor.</p>
${form(quiz, module)}</div>`,
  });
}

function rules({ pass, questions }: Quiz): string {
  const points = questions.reduce((sum, question) => sum + question.points, 0);
  const critical = questions.filter((question) => question.critical).length;
  const must = critical === 0 ? "" : ` The questions marked critical (${critical}) must be right as well.`;
  const total = `${counted(questions.length, "question")}, ${counted(points, "point")} in all.`;
  return `${total} The pass mark is ${percent(pass)}.${must} Look things up only after you have answered.`;
}

const percent = (fraction: number): string => `${Math.round(fraction * 1000) / 10} %`;

function form({ questions }: Quiz, module: Module): Html {
  const seed = `${module.id}@${module.revision}`;
  return html`<form class="quiz" autocomplete="off">
<ol class="questions">
${questions.map((question, at) => item(question, at + 1, seed))}</ol>
<p class="warning" tabindex="-1" hidden></p>
<div class="actions"><button type="submit" class="is-main" hidden>Check my answers</button></div>
</form>
`;
}

function item(question: Question, number: number, seed: string): Html {
  return html`<li class="question" id="question-${number}" data-question="${question.id}">
<fieldset>
<legend><span class="question-number">${number}</span> ${question.ask}</legend>
${marks(question)}${answerFields(question, seed)}</fieldset>
</li>
`;
}

const tasks: Readonly<Record<QuestionKind, string | undefined>> = {
  "choose-one": "Choose one.",
  "choose-several": "Choose all that are right.",
  number: undefined,
  arrange: "Put the steps in an order that works.",
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
