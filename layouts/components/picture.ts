/** A picture of the content, in as many widths as it was made, with room kept for it until it comes. */

import { t } from "../../src/engine/words.ts";
import { type Address, linkToFile } from "../../src/model/address.ts";
import { filesOf, isRaster, type MadeFile, type Size } from "../../src/model/picture-files.ts";
import { attribute, type Html, html } from "../html.ts";

export type SizeOf = (file: string) => Size | undefined;

/** The column of text is 44rem wide at most, and on a phone all there is. */
const shownWidth = "(min-width: 46rem) 44rem, 100vw";

/** `file` is its path in the content folder. One that says no size is shown as it is. */
export function picture(
  { file, alt }: { readonly file: string; readonly alt: string },
  { sizeOf }: { readonly sizeOf: SizeOf },
  from: Address,
): Html {
  const size = sizeOf(file);
  const { main, sizes } = size === undefined ? { main: { file }, sizes: [] } : filesOf(file, size);
  const image = html`<img src="${addressed(from, main.file)}" alt="${alt}"${"width" in main ? sizeAttributes(main) : undefined} loading="lazy" decoding="async">`;
  if (sizes.length === 0) return image;
  const list = sizes.map((each) => `${addressed(from, each.file)} ${each.width}w`).join(", ");
  return html`<picture><source type="image/webp" srcset="${list}" sizes="${shownWidth}">${image}</picture>`;
}

const sizeAttributes = ({ width, height }: MadeFile): Html =>
  html`${attribute("width", width)}${attribute("height", height)}`;

/** Spaces and commas part the entries of a srcset. */
const addressed = (from: Address, file: string): string =>
  linkToFile(from, file).replace(/[\s,%"]/g, (sign) => encodeURIComponent(sign));

/**
 * Leads to the widest there is, which the script shows in the page. Nothing for a picture that is shown as large as it is.
 * `bare` is what the link is called until then, where it leads to less than the page shows.
 */
export function enlarge(
  file: string,
  { sizeOf }: { readonly sizeOf: SizeOf },
  from: Address,
  bare?: string,
): Html | undefined {
  const size = sizeOf(file);
  if (isRaster(file) && size !== undefined && size.width <= shownPixels) return undefined;
  const [text, button] = bare === undefined ? [t`Enlarge`] : [bare, t`Enlarge`];
  return html` <a class="enlarge" href="${addressed(from, file)}"${attribute("data-button", button)}>${text}</a>`;
}

const shownPixels = 480;
