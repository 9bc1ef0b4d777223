/** Room to write in by hand. */
import { attribute, type Html, html } from "../html.ts";

/** Named lines to fill in, side by side where they fit. */
export function blanks(names: readonly string[]): Html {
  return html`<dl class="blanks">
${names.map((name) => html`<div><dt>${name}</dt><dd></dd></div>\n`)}</dl>
`;
}

/** Ruled lines without a name. */
export function ruledLines(count: number): Html {
  return html`<div class="ruled-lines" aria-hidden="true">${Array.from({ length: count }, () => html`<i></i>`)}</div>
`;
}

/** A short line within a sentence. `kind` "short" is for a figure. */
export function blank(kind?: "short"): Html {
  return html`<i class="blank-line"${attribute("data-kind", kind)} aria-hidden="true"></i>`;
}
