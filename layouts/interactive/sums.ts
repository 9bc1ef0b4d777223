/** The page of bench sums: a form for each, which the script works out; its formulas and sources for all. */
import { t } from "../../src/engine/words.ts";
import { type Formula, standingWords } from "../../src/engine/workshop/formulas/formula.ts";
import { formulasOf, signsOf } from "../../src/engine/workshop/formulas/index.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Programme } from "../../src/model/programme.ts";
import type { SumsPageData } from "../../src/model/sums-data.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { airForm, vapourForm } from "./sums/air-forms.ts";
import { stripForm, torqueForm } from "./sums/bolt-forms.ts";
import { type Setting, type SumForm, sumForm } from "./sums/form.ts";
import { choiceOf, figuresToBring, isReckonable } from "./sums/own-substances.ts";
import { convertForm, identifyForm, threadForm } from "./sums/thread-forms.ts";

/** In the order in which they stand on the page. */
export const sumForms: readonly SumForm[] = [
  convertForm,
  threadForm,
  identifyForm,
  torqueForm,
  stripForm,
  vapourForm,
  airForm,
];

export const sumsTitle = t`Bench sums`;

const from: Address = { kind: "plain", id: "sums" };

export function sumsPage({ site: { programme }, substances, assets }: Book): string {
  const own = [...substances.values()].map(({ sheet }) => sheet).filter(isReckonable);
  const data: SumsPageData = { figures: figuresToBring(own) };
  const setting: Setting = {
    units: programme.units,
    substances: own.map(choiceOf),
    bringsFigures: Object.keys(data.figures).length > 0,
  };
  return frame({
    address: from,
    title: sumsTitle,
    programme,
    assets,
    scripts: ["sums"],
    data,
    description: t`Units, threads, tightening torque, stripping, solvent vapour and fresh air, reckoned on the page.`,
    main: html`<div class="sheet sums">
<header class="sheet-head"><h1>${sumsTitle}</h1>
<p class="summary">Write quantities as you would on paper; each answer says what it assumes, from where, and who decides. Threads side by side: <a href="${linkTo(from, chart)}">the thread chart</a>. All formulas: <a href="${linkTo(from, formulas)}">formulas and sources</a>.</p></header>
<p class="needs-script">To reckon here, the page needs JavaScript, which is off or has not come. Without it, these are the formulas with their sources, to be worked out by hand; the thread chart needs none.</p>
<div class="sums-head">
<nav class="sums-list" aria-label="Sums"><ul>
${sumForms.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>\n`)}</ul></nav>
${unitChoice(programme.units)}</div>
${sumForms.map((form) => section(form, setting))}</div>`,
  });
}

const chart: Address = { kind: "plain", id: "sums/threads" };
const formulas: Address = { kind: "plain", id: "sums/formulas" };

const systems = [
  { value: "metric", name: t`metric` },
  { value: "inch", name: t`inch` },
] as const;

function unitChoice(units: Programme["units"]): Html {
  return html`<fieldset class="unit-choice" hidden><legend>Units that stand first</legend>
${systems.map(({ value, name }) => html`<label><input type="radio" name="units" value="${value}"${value === units && html` checked`}> ${name}</label>\n`)}</fieldset>
`;
}

function section(form: SumForm, setting: Setting): Html {
  const { id, title, lead, deferral } = form;
  return html`<section class="sum group" id="${id}" aria-labelledby="s_${id}">
<h2 id="s_${id}">${title}</h2>
<div class="sum-work">
<p class="sum-lead">${lead}</p>
${sumForm(form, setting)}<div class="sum-answer" aria-live="polite"></div>
<div class="sum-grounds"></div>
<p class="sum-decides">${deferral}</p>
</div>
<div class="sum-how">
<h3>How it is reckoned</h3>
${formulasOf(id).map(formulaNote)}${signsOf(id).map((signs) => html`<p>${signs}</p>\n`)}<p><a href="${linkTo(from, { ...formulas, at: `f-${formulasOf(id)[0]!.id}` })}">Units, and for what each holds</a></p>
</div>
</section>
`;
}

/** A figure is not parted from its unit where the line is short. */
const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(?:%|mm|in|lb|kg|m\/s²|in³|L|L\/mol|°C)(?![\w·]))/g, "$1\u00a0");

/** As in the table of formulas, in a paragraph. */
function formulaNote({ name, says, source, standing }: Formula): Html {
  return html`<p><b>${name}.</b> ${unbroken(says.join("; "))}. <span class="sum-source">Source: ${source} (${standingWords[standing]}).</span></p>
`;
}
