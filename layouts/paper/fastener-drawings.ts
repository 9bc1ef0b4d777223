/** Each set of fasteners drawn at true size, as far as its thread and length are known, to hold a screw against. */
import { trueSize } from "../../src/engine/workshop/true-size.ts";
import type { ModuleFastener } from "../../src/model/module.ts";
import { type Html, html, join } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { blank } from "./blanks.ts";
import { drawingOf, scaleBar } from "./drawing.ts";
import { kindWords } from "./kind-words.ts";
import type { SheetSource } from "./sheet.ts";

/** Undefined for a module without fasteners. */
export function fastenerDrawings({ view: { module } }: SheetSource): Html | undefined {
  const sets = [...module.procedure.fasteners.values()];
  if (sets.length === 0) return undefined;
  return html`<div class="scale">
${scaleBar}<p><b>Print at 100 %: measure the bar; if it is not 100 mm, the drawings are not true.</b></p>
<p class="on-screen">On a screen they are true only by chance.</p>
</div>
<p class="paper-how">Lengths are from under the head; of a countersunk screw, or one without a head, over all. The head’s shape is not drawn. Figures are nominal: a worn or made-to-fit screw differs, and the machine in hand decides.</p>
<ul class="drawn">
${sets.map(drawnSet)}</ul>
`;
}

function drawnSet(set: ModuleFastener): Html {
  const size = trueSize(set.thread, set.length);
  const drawing = drawingOf(size, set.kind);
  return html`<li>
<div class="drawn-words"><p><b>${set.count} ${set.name}</b></p>
<p>${whatItIs(set)}</p></div>
<div class="drawn-figure">${drawing.picture}<p class="small">${join([drawing.figures && sentence(drawing.figures), ...drawing.missing], " ")}</p>
${drawing.missing.length === 0 ? undefined : toMeasure}</div>
</li>
`;
}

const toMeasure = html`<p class="drawn-measured">Measured: diameter ${blank("short")} mm, pitch ${blank("short")} mm, length ${blank("short")} mm.</p>
`;

function whatItIs({ kind, thread, length, drive, note }: ModuleFastener): Html {
  const size = [thread, length].filter((each) => each !== undefined).join(" × ");
  const words = [kindWords(kind), size, drive].filter((each) => each !== undefined && each !== "");
  return html`${sentence(capital(words.join(", ")))}${note === undefined ? undefined : html` <small>${sentence(capital(note))}</small>`}`;
}
