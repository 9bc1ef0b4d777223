/** Labels to cut out and put into the tins: what lies there, how many, and between which steps. */

import { type Label, type LabelledThing, labelsOf, type Stay } from "../../src/engine/procedure/labels.ts";
import { t } from "../../src/engine/words.ts";
import type { Module } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { traysOf } from "../tray/account.ts";
import { capital, sentence } from "../words.ts";
import { blank } from "./blanks.ts";
import { kindWords } from "./kind-words.ts";
import type { SheetSource } from "./sheet.ts";

/** Undefined for a module in which nothing comes off. */
export function trayLabels({ view }: SheetSource): Html | undefined {
  const { module } = view;
  const labels = labelsOf(module.procedure, traysOf(view));
  if (labels.length === 0) return undefined;
  return html`<p class="paper-how">Cut along the dashed lines and lay each label into its tin before the first step. Push a matched screw through its own number on the label, or lay it on it, the moment it is out.</p>
<ul class="cut labels">
${labels.map((label) => labelOf(label, module))}</ul>
`;
}

function labelOf({ place, things }: Label, module: Module): Html {
  return html`<li class="cut-piece label">
<h3>${place === undefined ? html`Kept at ${blank()}` : capital(place)}</h3>
<ul>
${things.map((thing) => contents(thing, module))}</ul>
<p class="label-foot">${module.title}, revision ${module.revision}. Machine ${blank()}</p>
</li>
`;
}

function contents(thing: LabelledThing, module: Module): Html {
  const { name, count, detail, numbered, stays } = thing;
  const words = [sizeWords(thing, module), detail].filter((each) => each !== undefined && each !== "");
  return html`<li><p class="label-thing"><b>${count}</b> ${name}</p>
${words.length === 0 ? undefined : html`<p>${words.map((each) => html`${sentence(capital(each!))} `)}</p>\n`}<p class="label-steps">${stays.map((stay) => html`${stayWords(stay)} `)}</p>
${numbered === undefined ? undefined : places(numbered)}</li>
`;
}

/** Thread, length and drive of a fastener, as the module has them. */
function sizeWords({ id }: LabelledThing, { procedure }: Module): string | undefined {
  const set = procedure.fasteners.get(id);
  if (set === undefined) return undefined;
  const size = [set.thread, set.length].filter((each) => each !== undefined).join(" × ");
  return [size, set.kind === "machine screw" ? undefined : kindWords(set.kind), set.drive]
    .filter((each) => each !== undefined && each !== "")
    .join(", ");
}

function stayWords({ out, back }: Stay): string {
  if (out === undefined)
    return back === undefined ? t`Off throughout.` : t`Here from the start, on at step ${back}.`;
  return back === undefined
    ? t`Off at step ${out}, stays off.`
    : t`Off at step ${out}, on again at step ${back}.`;
}

/** A place for each of a matched set, in the row in which they sit. */
function places(count: number): Html {
  const numbers = Array.from({ length: count }, (_, index) => index + 1);
  return html`<ol class="label-places">${numbers.map((number) => html`<li>${number}</li>`)}</ol>
<p>Each to its own hole. 1 sits ${blank()}, and the count goes ${blank()}</p>
`;
}
