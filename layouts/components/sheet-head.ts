/** The head of a tool's, substance's or hazard's sheet. */
import { t } from "../../src/engine/words.ts";
import type { Sheet } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";

export const sheetNames: Readonly<Record<Sheet["kind"], string>> = {
  tool: t`Tool`,
  substance: t`Substance`,
  hazard: t`Hazard`,
};

export function sheetHead({ kind, title, summary }: Sheet): Html {
  return html`<header class="sheet-head">
<p class="sheet-kind">${sheetNames[kind]}</p>
<h1>${title}</h1>
<p class="summary">${summary}</p>
</header>
`;
}
