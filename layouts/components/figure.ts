/** A step's figure with its caption. */
import type { Address } from "../../src/model/address.ts";
import type { Figure } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { picture } from "./picture.ts";

export function figure({ file, alt, caption }: Figure, book: Book, from: Address): Html {
  return html`<figure class="figure">${picture({ file, alt }, book, from)}${caption === undefined ? undefined : html`<figcaption>${caption}</figcaption>`}</figure>
`;
}
