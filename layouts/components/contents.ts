/** What stands on a long page, as a few links at its head. */
import { type Html, html, join } from "../html.ts";

/**
 * A part of the page: its id, its name ("" where nothing is to lead there), and what it is; undefined where the page has no
 * such part.
 */
export type PartOfPage = readonly [id: string, name: string, content: Html | undefined];

export function contents(parts: readonly PartOfPage[]): Html | undefined {
  const there = parts.filter(
    ([, name, content]) => name !== "" && content !== undefined && content.text !== "",
  );
  if (there.length < 2) return undefined;
  return html`<nav aria-label="On this page"><p class="step-links">${join(
    there.map(([id, name]) => html`<a href="#${id}">${name}</a>`),
    " ",
  )}</p></nav>
`;
}
