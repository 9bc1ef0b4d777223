/** Practices to be sorted by hand at a table: lettered slips, and on another page the key by letters. */

import { mergedReasons } from "../../src/engine/procedure/merged-reasons.ts";
import { type SlipKey, type Slips, slipsOf } from "../../src/engine/procedure/slips.ts";
import { language, t } from "../../src/engine/words.ts";
import type { ModuleView, Practice } from "../../src/model/site.ts";
import { type Column, ruledTable } from "../components/ruled-table.ts";
import { type Html, html, join } from "../html.ts";
import { capital, counted, sentence } from "../words.ts";
import type { SheetSource } from "./sheet.ts";

interface PracticeOnPaper {
  readonly practice: Practice;
  readonly number: number;
  readonly slips: Slips;
  readonly titleOf: (step: string) => string;
}

/** Undefined for a module without practices. */
export function practiceSlips({ view }: SheetSource): Html | undefined {
  if (view.practices.length === 0) return undefined;
  return html`<p class="paper-how">Cut along the dashed lines, keep each practice apart, and lay its slips in an order that works at the bench. Often more than one does. Some may belong to another job: lay those aside.</p>
${onPaper(view).map(cutUp)}`;
}

export function slipKeys({ view }: SheetSource): Html | undefined {
  if (view.practices.length === 0) return undefined;
  return html`<p class="paper-how">For the slips of revision ${view.module.revision}; the letters are the same each time that it is printed. An order is right when it breaks none of the pairs.</p>
${onPaper(view).map(keyOf)}`;
}

function onPaper(view: ModuleView): PracticeOnPaper[] {
  return slipsOfView.get(view) ?? remember(view);
}

/** Slips and key are made from the same. */
const slipsOfView = new WeakMap<ModuleView, PracticeOnPaper[]>();

function remember(view: ModuleView): PracticeOnPaper[] {
  const { module, steps, practices } = view;
  const titles = new Map(steps.map(({ step }) => [step.id, step.title]));
  const made = practices.map((practice, index) => ({
    practice,
    number: index + 1,
    slips: slipsOf(practice.graph, practice.mixedIn, `${module.id}@${module.revision}:${practice.id}`),
    titleOf: (step: string) => titles.get(step) ?? step,
  }));
  slipsOfView.set(view, made);
  return made;
}

function cutUp({ practice, number, slips: { slips }, titleOf }: PracticeOnPaper): Html {
  return html`<h3>${number}. ${practice.title}</h3>
<ul class="cut sort-slips">
${slips.map(({ letter, step }) => html`<li class="cut-piece sort-slip"><b>${letter}</b><span>${titleOf(step)}</span><small>${number}</small></li>\n`)}</ul>
`;
}

function keyOf({ practice, number, slips: { slips, key }, titleOf }: PracticeOnPaper): Html {
  const titles = new Map(slips.map(({ letter, step }) => [letter, titleOf(step)]));
  return html`<section class="slip-key" aria-labelledby="s_key-${practice.id}">
<h3 id="s_key-${practice.id}">${number}. ${practice.title}</h3>
<p>One right order: <b class="slip-order">${key.order.join(" ")}</b>. ${otherOrders(key)}</p>
${
  key.leftOut.length === 0
    ? undefined
    : html`<p>Laid aside: ${join(
        key.leftOut.map((letter) => html`<b>${letter}</b> ${titles.get(letter)}`),
        "; ",
      )}.</p>\n`
}${pairs(key)}</section>
`;
}

function otherOrders({ orders }: SlipKey): string {
  if (orders === null) return t`Very many other orders are right too.`;
  if (orders === 1n) return t`No other order is right.`;
  return orders === 2n
    ? t`One other order is right too.`
    : t`${(orders - 1n).toLocaleString(language)} other orders are right too.`;
}

function pairs({ pairs }: SlipKey): Html {
  if (pairs.length === 0) return html`<p>Nothing binds these steps.</p>\n`;
  type Row = SlipKey["pairs"][number];
  const columns: readonly Column<Row>[] = [
    {
      name: t`First`,
      kind: "head",
      value: ({ letters: [first, then] }) => html`${first} before ${then}`,
    },
    {
      name: t`Because`,
      kind: "mark",
      value: ({ because, critical }) =>
        html`${critical ? html`<strong>Critical.</strong> ` : undefined}${mergedReasons(because)
          .map((one) => sentence(capital(one)))
          .join(" ")}`,
    },
  ];
  return html`<p class="small">${counted(pairs.length, "bound pair")}.</p>\n${ruledTable("key-pairs", columns, pairs)}`;
}
