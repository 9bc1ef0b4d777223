/** A step's figure with its caption. */
import { type Address, linkToFile } from "../../src/model/address.ts";
import type { Figure } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { attribute, type Html, html } from "../html.ts";

export function figure({ file, alt, caption }: Figure, book: Book, from: Address): Html {
  const size = book.sizeOf(file);
  return html`<figure class="figure"><img src="${linkToFile(from, file)}" alt="${alt}"${attribute("width", size?.width)}${attribute("height", size?.height)} loading="lazy">${caption === undefined ? undefined : html`<figcaption>${caption}</figcaption>`}</figure>
`;
}
