/** A heading of the author's with its prose. */
import type { Address } from "../../src/model/address.ts";
import type { Section } from "../../src/model/source.ts";
import type { Book } from "../book.ts";
import { type Html, html, raw } from "../html.ts";

/** `deeper` levels below the one it was written at, where it stands under a heading of ours. */
export function plainSection(
  section: Section,
  id: string,
  path: string,
  book: Book,
  from: Address,
  deeper = 0,
): Html {
  const prose = book.prose(section, path, from);
  if (section.level === 0) return html`<div class="prose">${prose}</div>\n`;
  const tag = raw(`h${Math.min(6, Math.max(2, section.level) + deeper)}`);
  return html`<div class="prose"><${tag} id="${id}">${section.title}</${tag}>
${prose}</div>
`;
}
