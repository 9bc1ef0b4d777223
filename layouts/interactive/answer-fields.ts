/** Where a question is answered: a row for each kind. On paper the same fields are ticked and written on. */
import type { Question, QuestionKind, QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { shownOrder } from "../../src/engine/quiz/shown.ts";
import { type Html, html } from "../html.ts";
import { matchFields, sortFields } from "./item-fields.ts";
import { paperSteps } from "./paper-steps.ts";
import { type Drawn, pointField } from "./point-field.ts";

type Fields<Kind extends QuestionKind> = (
  question: QuestionOf<Kind>,
  order: readonly number[],
  drawn: Drawn,
) => Html;

const fields: { readonly [Kind in QuestionKind]: Fields<Kind> } = {
  "choose-one": ({ id, options }, order) => choices(id, options, order, "radio"),
  "choose-several": ({ id, options }, order) => choices(id, options, order, "checkbox"),
  number: ({ id, answer }) => numberField(id, answer.unit),
  arrange: ({ steps }, order) => paperSteps(order.map((place) => steps[place]!.title)),
  match: matchFields,
  text: textField,
  point: (question, order, drawn) =>
    html`${pointField(question, drawn)}${choices(question.id, question.places, order, "radio")}`,
  sort: sortFields,
  worked: ({ id, cases, chosen }) => numberField(id, cases[chosen]!.answer.unit),
};

/** `seed` draws the order that stands on paper, so that the written one gives nothing away. */
export function answerFields(question: Question, seed: string, drawn: Drawn): Html {
  const draw = fields[question.kind] as (question: Question, order: readonly number[], drawn: Drawn) => Html;
  return draw(question, shownOrder(question, seed), drawn);
}

/** `value` is the option's place in the written order, which is what an answer speaks of. */
function choices(
  id: string,
  options: readonly { readonly text: string }[],
  order: readonly number[],
  type: "radio" | "checkbox",
): Html {
  return html`<ul class="options">
${order.map((place) => html`<li><label><input type="${type}" name="${type === "radio" ? id : `${id}-${place}`}" value="${place}"> <span>${options[place]!.text}</span></label></li>\n`)}</ul>
`;
}

function numberField(id: string, unit: string): Html {
  return html`<p class="number-field"><label for="answer-${id}">Answer</label> <input type="text" id="answer-${id}" name="${id}" inputmode="decimal" autocomplete="off" size="12"${unit === "" ? undefined : html` aria-describedby="unit-${id}"`}>${unit === "" ? undefined : html` <span id="unit-${id}">${unit} <small>unless you write another unit</small></span>`}</p>
`;
}

function textField({ id }: QuestionOf<"text">): Html {
  return html`<p class="number-field"><label for="answer-${id}">Answer</label> <input type="text" id="answer-${id}" name="${id}" autocomplete="off" autocapitalize="none" spellcheck="false" size="28" maxlength="200"></p>
`;
}
