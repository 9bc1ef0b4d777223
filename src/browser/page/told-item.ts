/** A list item that tells something, its reasons as a list within. */
import { type Attributes, type Content, element } from "./element.ts";
import type { Told } from "./words.ts";

export function toldItem(
  { text, reasons }: Told,
  attributes: Attributes = {},
  before?: Content,
): HTMLLIElement {
  const list = reasons.map((reason) => element("li", {}, reason));
  return element("li", attributes, before, text, list.length === 0 ? undefined : element("ul", {}, ...list));
}
