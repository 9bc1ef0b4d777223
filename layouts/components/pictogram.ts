/** GHS pictograms, as pictures of the site: a red-edged diamond with a black symbol on white. */
import { labelWordNames } from "../../src/engine/label-words.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkToFile } from "../../src/model/address.ts";
import type { GhsPictogram, Substance } from "../../src/model/sheet.ts";
import { pictogramNames } from "../ghs.ts";
import { type Html, html } from "../html.ts";

/** `size` in pixels. */
export function pictograms(codes: readonly GhsPictogram[], from: Address, size = 44): Html | undefined {
  if (codes.length === 0) return undefined;
  const picture = (code: GhsPictogram) =>
    html`<img src="${linkToFile(from, `assets/${code.toLowerCase()}.svg`)}" width="${size}" height="${size}" alt="${code}, ${pictogramNames[code]}">`;
  return html`<span class="pictograms">${codes.map(picture)}</span>`;
}

/** The signal word of the label, said to be that, so that nobody takes it for the task's. */
export function labelWord({ signal }: Substance): Html {
  return html`<span class="label-word">${signal === "none" ? t`No signal word on the label` : html`Label says <b>${labelWordNames[signal]}</b>`}</span>`;
}
