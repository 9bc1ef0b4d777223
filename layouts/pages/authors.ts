/**
 * The page for authors: how steps are written, every field, every kind of question, every code of `check`. Its part in English
 * is made of plain data, not of marked words: the fields and what commands say are English in every programme.
 */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import { exampleModule, type FieldTable, type KindExample } from "../../src/model/authors-guide.ts";
import { type CodeEntry, codes } from "../../src/model/codes.ts";
import type { Book } from "../book.ts";
import { codeFrame, toldFault } from "../components/code-frame.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { authorsWords as words } from "./authors-words.ts";

const address: Address = { kind: "plain", id: "authors" };

export function authorsPage({ site: { programme }, assets, authors }: Book): string {
  const { tables, questions, told } = authors!;
  const title = t`For authors`;
  return frame({
    address,
    title,
    programme,
    assets,
    description: t`The fields of the files of which this site is made, with examples, and what check finds in them.`,
    main: html`<div class="sheet authors">
<header class="sheet-head"><h1>${title}</h1></header>
<div lang="en" dir="ltr">
<p class="summary">${words.summary}</p>
<nav class="sums-list" aria-label="${words.parts}"><ul>
${parts.map(([id, name]) => html`<li><a href="#${id}">${name}</a></li>\n`)}</ul></nav>
<h2 id="steps">${words.steps}</h2>
${words.ofSteps.map((text) => html`<p>${text}</p>\n`)}${codeFrame(exampleModule, words.example)}
<h2 id="questions">${words.questions}</h2>
<p>${words.ofQuestions}</p>
${questions.map(questionExample)}<h2 id="fields">${words.fields}</h2>
<p>${words.ofFields}</p>
${tables.map(fieldTable)}<h2 id="codes">${words.codes}</h2>
<p>${words.ofCodes}</p>
<dl class="authors-entries">
${Object.entries(codes).map((entry) => codeEntry(entry, told.get(entry[0])))}</dl>
</div>
</div>`,
  });
}

const parts = [
  ["steps", words.steps],
  ["questions", words.questions],
  ["fields", words.fields],
  ["codes", words.codes],
] as const;

const questionExample = ({ kind, text }: KindExample): Html => html`<h3 id="kind-${kind}">${kind}</h3>
${codeFrame(text, `${words.example}: ${kind}`)}
`;

const fieldTable = ({ id, title, fields }: FieldTable): Html => html`<h3 id="of-${id}">${title}</h3>
<dl class="authors-entries">
${fields.map(
  ({
    path,
    isRequired,
    kind,
    description,
    example,
  }) => html`<div id="${anchorOf(id, path)}"><dt><code>${path}</code> <span class="authors-kind">${kind}${isRequired && `; ${words.required}`}</span></dt>
<dd>${description}</dd>
<dd><code>${example}</code></dd></div>
`,
)}</dl>
`;

function codeEntry([code, { severity, means, mend }]: [string, CodeEntry], told: string | undefined): Html {
  const example =
    told &&
    html`<dd><details><summary>${words.example}</summary>${toldFault(told, `${words.lines}: ${code}`)}</details></dd>`;
  return html`<div id="code-${code}"><dt><code>${code}</code> <span class="authors-kind">${severity}</span></dt>
<dd>${means}</dd>
<dd>${mend}</dd>${example}</div>
`;
}

/** The place of a field on the page: "field-module-parts_ID_held-by". */
const anchorOf = (table: string, path: string): string =>
  `field-${table}-${path.replaceAll("[]", "").replaceAll(".", "_")}`;
