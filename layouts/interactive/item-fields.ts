/** Fields in which each item of a list gets something: its partner, or its group. */
import type { QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { type Html, html } from "../html.ts";

/** A letter for each choice, in the order shown. */
const letter = (place: number): string => String.fromCharCode(65 + place);

/** On paper the choices stand below one another with letters, and each item has a box for one. */
export function matchFields({ id, items, choices }: QuestionOf<"match">, order: readonly number[]): Html {
  return html`<ul class="pairs">
${items.map(({ text }, item) => html`<li><label for="answer-${id}-${item}">${text}</label> <span class="paper-number" aria-hidden="true"></span><select id="answer-${id}-${item}" name="${id}-${item}" autocomplete="off"><option value="">choose</option>${order.map((place) => html`<option value="${place}">${choices[place]}</option>`)}</select></li>\n`)}</ul>
<ul class="paper-choices" aria-hidden="true">
${order.map((place, at) => html`<li>${letter(at)}: ${choices[place]}</li>\n`)}</ul>
`;
}

export function sortFields({ id, items, groups }: QuestionOf<"sort">, order: readonly number[]): Html {
  return html`<ul class="sorting">
${order.map((item) => html`<li data-item="${item}"><fieldset><legend>${items[item]!.text}</legend>${groups.map((group, place) => html`<label><input type="radio" name="${id}-${item}" value="${place}"> <span>${group}</span></label> `)}</fieldset></li>\n`)}</ul>
`;
}
