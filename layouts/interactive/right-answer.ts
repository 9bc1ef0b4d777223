/** What is right, as a key sheet says it: a row for each kind of question. */

import type { Option } from "../../src/engine/quiz/choice.ts";
import type { Question, QuestionKind, QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { formatWithTolerance } from "../../src/engine/quiz/tolerance.ts";
import { t } from "../../src/engine/words.ts";
import { type Html, html } from "../html.ts";
import { counted } from "../words.ts";

type Say<Kind extends QuestionKind> = (question: QuestionOf<Kind>) => Html;

const rows: { readonly [Kind in QuestionKind]: Say<Kind> } = {
  "choose-one": ({ options }) => ticked(options),
  "choose-several": ({ options }) => ticked(options),
  number: ({ answer, tolerance }) =>
    html`<p><strong>${formatWithTolerance(answer, tolerance)}</strong></p>\n`,
  arrange: ({ steps }) => html`<ol class="key-steps">
${steps.map(({ title }) => html`<li>${title}</li>\n`)}</ol>
<p>Or any other order that keeps what must come before what.</p>
`,
  match: ({ items, choices }) => pairs(items.map(({ text, choice, why }) => [text, choices[choice]!, why])),
  text: ({ answers, slips }) =>
    html`<p>${answers.map((answer, at) => html`${at === 0 ? "" : t`, or `}<strong>${answer}</strong>`)}${slips === 0 ? "" : t` (${counted(slips, "letter")} may be wrong, missing or too many)`}</p>\n`,
  point: ({ places }) => ticked(places),
  sort: ({ items, groups }) => pairs(items.map(({ text, group, why }) => [text, groups[group]!, why])),
  worked: ({ cases, tolerance }) =>
    pairs(cases.map(({ ask, answer }) => [ask, formatWithTolerance(answer, tolerance), undefined])),
};

export function rightAnswer(question: Question): Html {
  return (rows[question.kind] as (question: Question) => Html)(question);
}

function ticked(options: readonly Option[]): Html {
  return html`<ul class="key-options">
${options.map(({ text, right, why }) => html`<li${right ? html` class="is-right"` : undefined}>${right ? html`<strong>Right: ${text}</strong>` : html`${text}`}${why === undefined ? undefined : html` <small>${why}</small>`}</li>\n`)}</ul>
`;
}

function pairs(rows: readonly (readonly [string, string, string | undefined])[]): Html {
  return html`<dl class="key-pairs">
${rows.map(([what, right, why]) => html`<div><dt>${what}</dt><dd><strong>${right}</strong>${why === undefined ? undefined : html` <small>${why}</small>`}</dd></div>\n`)}</dl>
`;
}
