/** The form of a sum, from rows of data. */

import { inLanguage, t } from "../../../src/engine/words.ts";
import type { SumName } from "../../../src/engine/workshop/formulas/formula.ts";
import type { Programme } from "../../../src/model/programme.ts";
import { type Html, html } from "../../html.ts";

/** What is written for example, in the units of either system; one text where there is no difference. */
export type Example = string | { readonly metric: string; readonly inch: string };

export interface Choice {
  readonly value: string;
  readonly name: string;
}

export interface SumField {
  readonly name: string;
  readonly label: string;
  /** Written below it, after its examples. */
  readonly hint?: string;
  readonly example?: Example;
  /** Without it a line to write on. */
  readonly choices?: readonly Choice[];
  /** The programme's own substances are offered before the choices. */
  readonly isSubstance?: true;
  /** Offered while one writes; anything else may be written as well. */
  readonly known?: readonly string[];
  readonly isTick?: true;
  readonly isOptional?: true;
}

export interface SumForm {
  /** As the script names it. */
  readonly id: SumName;
  readonly title: string;
  /** What people call it: the search finds it by these and by its title. */
  readonly foundBy: readonly string[];
  /** What it is for, in a sentence or two. */
  readonly lead: Html | string;
  readonly fields: readonly SumField[];
  /** Fields that few need, folded away under a title. */
  readonly more?: { readonly title: string; readonly fields: readonly SumField[] };
  /** Who decides, since a sum does not. */
  readonly deferral: string;
}

type Units = Programme["units"];

/** What forms take from the programme. */
export interface Setting {
  readonly units: Units;
  /** Its own substances. */
  readonly substances: readonly Choice[];
  /** Whether one of them brings figures of its own. */
  readonly bringsFigures: boolean;
}

export function sumForm({ id, fields, more }: SumForm, setting: Setting): Html {
  return html`<form class="sum-form" autocomplete="off" hidden>
<div class="sum-fields">
${fields.map((field) => fieldOf(id, field, setting))}</div>
${
  more &&
  html`<details class="sum-more"><summary>${more.title}</summary>
<div class="sum-fields">
${more.fields.map((field) => fieldOf(id, field, setting))}</div>
</details>
`
}<div class="actions"><button type="submit" class="is-main">Work it out</button></div>
</form>
`;
}

function fieldOf(sum: string, field: SumField, setting: Setting): Html {
  const id = `${sum}-${field.name}`;
  const hint = hintOf(field, setting);
  const described = hint === "" ? undefined : html` aria-describedby="${id}-hint"`;
  if (field.isTick) {
    return html`<div class="sum-field is-tick"><label><input type="checkbox" id="${id}" name="${field.name}" value="yes"${described}> ${field.label}</label>${hintLine(id, hint)}</div>
`;
  }
  const optional = field.isOptional ? html` <span class="optional">may stay empty</span>` : undefined;
  return html`<div class="sum-field"><label for="${id}">${field.label}${optional}</label>${control(id, field, described, setting)}${hintLine(id, hint)}</div>
`;
}

function control(id: string, field: SumField, described: Html | undefined, setting: Setting): Html {
  const { name, choices, known, isSubstance } = field;
  if (choices !== undefined) {
    const offered = isSubstance ? substanceOptions(choices, setting.substances) : choices.map(option);
    return html`<select id="${id}" name="${name}"${described}><option value="">—</option>${offered}</select>`;
  }
  const list = known && html` list="${id}-known"`;
  return html`<input type="text" id="${id}" name="${name}" autocapitalize="none" spellcheck="false" maxlength="200"${list}${described}>${known && html`<datalist id="${id}-known">${known.map((one) => html`<option value="${one}"></option>`)}</datalist>`}`;
}

const option = ({ value, name }: Choice): Html => html`<option value="${value}">${name}</option>`;

/** The programme's own first; one that the table knows by the same id stands there once. The last choice is that of one's own. */
function substanceOptions(choices: readonly Choice[], own: readonly Choice[]): readonly Html[] {
  if (own.length === 0) return choices.map(option);
  const ownValues = new Set(own.map(({ value }) => value));
  const table = choices.slice(0, -1).filter(({ value }) => !ownValues.has(value));
  return [
    html`<optgroup label="Of this programme">${own.map(option)}</optgroup>`,
    html`<optgroup label="From the table of solvents">${table.map(option)}</optgroup>`,
    ...choices.slice(-1).map(option),
  ];
}

const hintLine = (id: string, hint: string): Html | undefined =>
  hint === "" ? undefined : html`<p class="sum-hint" id="${id}-hint">${hint}</p>`;

const ownHint = t`figures that its sheet here gives come with it, and can be mended below`;

/** The programme's unit stands first. */
function hintOf({ example, hint = "", isSubstance }: SumField, { units, bringsFigures }: Setting): string {
  if (isSubstance && bringsFigures) return ownHint;
  const other = units === "metric" ? "inch" : "metric";
  const examples = typeof example === "object" ? t`${example[units]} or ${example[other]}` : example;
  const written = examples && t`such as ${inLanguage(examples)}`;
  return [written, hint].filter((text) => text !== undefined && text !== "").join("; ");
}
