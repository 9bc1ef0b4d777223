/** The formulas of the bench sums: what each says, of what unit, for what it holds and from where. */
import { t } from "../../src/engine/words.ts";
import {
  type Chapter,
  type Formula,
  type FormulaStanding,
  type SumName,
  standingWords,
} from "../../src/engine/workshop/formulas/formula.ts";
import { chapters } from "../../src/engine/workshop/formulas/index.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";

const from: Address = { kind: "plain", id: "sums/formulas" };

export const formulasTitle = t`Formulas and sources`;

export function formulasPage({ site: { programme }, assets }: Book): string {
  return frame({
    address: from,
    title: formulasTitle,
    programme,
    assets,
    description: t`The formulas behind the bench sums, each with its source and clause, its unit and the range in which it holds.`,
    main: html`<div class="sheet formulas">
<header class="sheet-head"><h1>${formulasTitle}</h1>
<p class="summary">What the <a href="${linkTo(from, { kind: "plain", id: "sums" })}">bench sums</a>, the thread chart and the checks of these sheets reckon by. Of each: what it says, its unit, for what it holds, from where, and how far to trust it.</p></header>
<nav class="sums-list" aria-label="Chapters"><ul>
${chapters.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>\n`)}</ul></nav>
<dl class="standings">
${standings.map(([standing, meaning]) => html`<div><dt>${standingWords[standing]}</dt><dd>${meaning}</dd></div>\n`)}</dl>
${chapters.map(chapterSection)}</div>`,
  });
}

const standings: readonly (readonly [standing: FormulaStanding, meaning: string])[] = [
  ["published", t`printed in the source that is named`],
  ["memory", t`recalled, and good only as far as the published figures beside it agree`],
  ["practice", t`usual in the trade, and in no standard`],
  ["own", t`chosen by the makers of these sums; the reason stands beside it`],
];

function chapterSection({ id, title, signs, formulas }: Chapter): Html {
  return html`<section class="group" aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
${signs !== "" && html`<p class="formula-signs">${signs}</p>\n`}${formulas.map(formulaEntry)}</section>
`;
}

function formulaEntry({ id, name, says, unit, range, source, standing, sums }: Formula): Html {
  return html`<article class="formula" aria-labelledby="f-${id}">
<h3 id="f-${id}">${name}</h3>
<div class="formula-says">${says.map((relation) => html`<p>${relation}</p>`)}</div>
<dl>
${unit !== "" && html`<div><dt>Unit</dt><dd>${unit}</dd></div>\n`}<div><dt>Holds for</dt><dd>${range}</dd></div>
<div><dt>Source</dt><dd>${source}</dd></div>
<div><dt>Standing</dt><dd>${standingWords[standing]}</dd></div>
${sums.length > 0 && html`<div class="formula-used"><dt>Used in</dt><dd>${sums.map((sum, at) => html`${at > 0 && ", "}${sumLink(sum)}`)}</dd></div>\n`}</dl>
</article>
`;
}

const sumWords: Readonly<Record<SumName, string>> = {
  convert: t`units`,
  thread: t`a thread by its name`,
  identify: t`which thread is this`,
  torque: t`tightening torque`,
  strip: t`stripping`,
  vapour: t`vapour in a room`,
  air: t`fresh air`,
};

const sumLink = (sum: SumName): Html =>
  html`<a href="${linkTo(from, { kind: "plain", id: "sums", at: sum })}">${sumWords[sum]}</a>`;
