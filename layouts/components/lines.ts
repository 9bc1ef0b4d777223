/** Short statements with their names at the left. */
import { attribute, type Html, html, type Value } from "../html.ts";

export interface Line {
  readonly name: Value;
  readonly values: readonly Value[];
  /** A class for lines that look different. */
  readonly kind?: string;
}

/** Lines without values are left out; undefined where none is left. */
export function lines(list: readonly Line[], kind = ""): Html | undefined {
  const shown = list.filter(({ values }) => values.length > 0);
  if (shown.length === 0) return undefined;
  return html`<dl class="lines${kind === "" ? "" : ` ${kind}`}">
${shown.map((line) => html`<div${attribute("class", line.kind)}><dt>${line.name}</dt>${line.values.map((value) => html`<dd>${value}</dd>`)}</div>\n`)}</dl>
`;
}

/** A line of one text, or none. */
export function line(name: Value, value: Value, kind?: string): Line {
  const values = value === undefined || value === "" ? [] : [value];
  return kind === undefined ? { name, values } : { name, values, kind };
}
