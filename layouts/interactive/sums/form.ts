/** The form of a sum, from rows of data. */

import type { Programme } from "../../../src/model/programme.ts";
import { type Html, html } from "../../html.ts";

/** What is written for example, in the units of either system; one text where there is no difference. */
export type Example = string | { readonly metric: string; readonly inch: string };

export interface SumField {
  readonly name: string;
  readonly label: string;
  /** Written below it, after its examples. */
  readonly hint?: string;
  readonly example?: Example;
  /** Without it a line to write on. */
  readonly choices?: readonly { readonly value: string; readonly name: string }[];
  /** Offered while one writes; anything else may be written as well. */
  readonly known?: readonly string[];
  readonly isTick?: true;
  readonly isOptional?: true;
}

export interface SumForm {
  /** As the script names it. */
  readonly id: string;
  readonly title: string;
  /** What people call it: the search finds it by these and by its title. */
  readonly foundBy: readonly string[];
  /** What it is for, in a sentence or two. */
  readonly lead: Html | string;
  readonly fields: readonly SumField[];
  /** Fields that few need, folded away under a title. */
  readonly more?: { readonly title: string; readonly fields: readonly SumField[] };
  /** How it is reckoned, in words: a formula a line, with its clause. */
  readonly formulas: readonly string[];
  readonly sources: string;
  /** Who decides, since a sum does not. */
  readonly deferral: string;
}

type Units = Programme["units"];

export function sumForm({ id, fields, more }: SumForm, units: Units): Html {
  return html`<form class="sum-form" autocomplete="off" hidden>
<div class="sum-fields">
${fields.map((field) => fieldOf(id, field, units))}</div>
${
  more &&
  html`<details class="sum-more"><summary>${more.title}</summary>
<div class="sum-fields">
${more.fields.map((field) => fieldOf(id, field, units))}</div>
</details>
`
}<div class="actions"><button type="submit" class="is-main">Work it out</button></div>
</form>
`;
}

function fieldOf(sum: string, field: SumField, units: Units): Html {
  const id = `${sum}-${field.name}`;
  const hint = hintOf(field, units);
  const described = hint === "" ? undefined : html` aria-describedby="${id}-hint"`;
  if (field.isTick) {
    return html`<div class="sum-field is-tick"><label><input type="checkbox" id="${id}" name="${field.name}" value="yes"${described}> ${field.label}</label>${hintLine(id, hint)}</div>
`;
  }
  const optional = field.isOptional ? html` <span class="optional">may stay empty</span>` : undefined;
  return html`<div class="sum-field"><label for="${id}">${field.label}${optional}</label>${control(id, field, described)}${hintLine(id, hint)}</div>
`;
}

function control(id: string, { name, choices, known }: SumField, described: Html | undefined): Html {
  if (choices !== undefined) {
    return html`<select id="${id}" name="${name}"${described}><option value="">—</option>${choices.map((choice) => html`<option value="${choice.value}">${choice.name}</option>`)}</select>`;
  }
  const list = known && html` list="${id}-known"`;
  return html`<input type="text" id="${id}" name="${name}" autocapitalize="none" spellcheck="false" maxlength="200"${list}${described}>${known && html`<datalist id="${id}-known">${known.map((one) => html`<option value="${one}"></option>`)}</datalist>`}`;
}

const hintLine = (id: string, hint: string): Html | undefined =>
  hint === "" ? undefined : html`<p class="sum-hint" id="${id}-hint">${hint}</p>`;

/** The programme's unit stands first. */
function hintOf({ example, hint = "" }: SumField, units: Units): string {
  const other = units === "metric" ? "inch" : "metric";
  const examples = typeof example === "object" ? `${example[units]} or ${example[other]}` : example;
  const written = examples && `such as ${examples}`;
  return [written, hint].filter((text) => text !== undefined && text !== "").join("; ");
}
