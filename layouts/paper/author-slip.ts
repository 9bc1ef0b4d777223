/** The slip by which what a trainee notes goes back to the author; two on a page. */
import { t } from "../../src/engine/words.ts";
import { box } from "../components/box.ts";
import { type Html, html } from "../html.ts";
import { blank, blanks, ruledLines } from "./blanks.ts";
import { type SheetSource, sourceWords } from "./sheet.ts";

const kinds = [t`unclear`, t`wrong`, t`missing`, t`dangerous`, t`better done otherwise`];

export function authorSlip(source: SheetSource): Html {
  const one = slip(source);
  return html`<div class="cut author-slips">
${one}${one}</div>
`;
}

function slip({ view: { module }, book }: SheetSource): Html {
  const { name, place } = book.site.programme;
  return html`<div class="cut-piece author-slip">
<p class="author-slip-name"><b>To the author</b> ${sourceWords(module)}</p>
${blanks([t`Step number`, t`Machine`, t`Date`])}
<p class="boxes">${kinds.map((kind) => html`<span>${box} ${kind}</span> `)}</p>
<p>What it says, and what you found at the bench:</p>
${ruledLines(6)}<p class="boxes"><span>${box} A photograph was taken; it is with ${blank()}</span></p>
${blanks([t`Your name, if you like`])}
<p>Hand it in at ${place === undefined ? blank() : html`${name}, ${place}`}. Where it is dangerous, tell the mentor at once and don’t wait for an answer to this slip.</p>
</div>
`;
}
