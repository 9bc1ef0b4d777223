/** Where a question is answered: a row for each kind. On paper the same fields are ticked and written on. */
import { kindOf, type Question, type QuestionKind, type QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { type Html, html } from "../html.ts";
import { paperSteps } from "./paper-steps.ts";

type Fields<Kind extends QuestionKind> = (question: QuestionOf<Kind>, order: readonly number[]) => Html;

const fields: { readonly [Kind in QuestionKind]: Fields<Kind> } = {
  "choose-one": (question, order) => options(question, order, "radio"),
  "choose-several": (question, order) => options(question, order, "checkbox"),
  number: numberField,
  arrange: ({ steps }, order) => paperSteps(order.map((place) => steps[place]!.title)),
};

/** `seed` draws the order that stands on paper, so that the written one gives nothing away. */
export function answerFields(question: Question, seed: string): Html {
  const order = kindOf(question).shown(question, seed);
  const draw = fields[question.kind] as (question: Question, order: readonly number[]) => Html;
  return draw(question, order);
}

/** `value` is the option's place in the written order, which is what an answer speaks of. */
function options(
  question: QuestionOf<"choose-one" | "choose-several">,
  order: readonly number[],
  type: "radio" | "checkbox",
): Html {
  return html`<ul class="options">
${order.map((place) => html`<li><label><input type="${type}" name="${type === "radio" ? question.id : `${question.id}-${place}`}" value="${place}"> <span>${question.options[place]!.text}</span></label></li>\n`)}</ul>
`;
}

function numberField({ id, answer }: QuestionOf<"number">): Html {
  return html`<p class="number-field"><label for="answer-${id}">Answer</label> <input type="text" id="answer-${id}" name="${id}" inputmode="decimal" autocomplete="off" size="12"${answer.unit === "" ? undefined : html` aria-describedby="unit-${id}"`}>${answer.unit === "" ? undefined : html` <span id="unit-${id}">${answer.unit} <small>unless you write another unit</small></span>`}</p>
`;
}
