/** Steps to be sorted by hand: on paper, or until the script puts its own list in their place. */
import { type Html, html } from "../html.ts";

/** Each with a ruled place for its number; in the order given, which must not be the written one. */
export function paperSteps(titles: readonly string[]): Html {
  return html`<ul class="paper-steps">
${titles.map((title) => html`<li><span class="paper-number" aria-hidden="true"></span>${title}</li>\n`)}</ul>
`;
}
