/** "Evening sheet": many trainees in two hours, on paper or on the device. Without the script it is a sheet to be filled in by hand. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { whereTable } from "../components/where-table.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { recordPageData } from "./desk/identified.ts";
import { seeAlso } from "./desk/see-also.ts";
import { deskWhere } from "./desk/where.ts";

/** For a programme that has an identifier; throws a RangeError for one that keeps no records. */
export function eveningPage(book: Book): string {
  const { programme } = book.site;
  const from: Address = { kind: "plain", id: "desk/evening" };
  return frame({
    address: from,
    title: t`Evening sheet`,
    programme,
    assets: book.assets,
    scripts: ["evening"],
    description: t`An evening with many trainees: watch one phase, note it down, sign together later.`,
    data: recordPageData(programme, from),
    main: html`<div class="sheet record-page evening-page">
<header class="title-block">
<div class="title-block-title"><h1>Evening sheet</h1>
<p>Open the files of those who have come, choose what is watched, and tick as you go from bench to bench. What you write is kept on this device at once. Sign all of it later, and hand everybody their file. Or print it first, and carry it over afterwards: the code beside each name opens the desk at that trainee.</p></div>
</header>
<p class="needs-script">On the device this page needs JavaScript, which is off or has not come. Without it, print it: there are lines for twelve names.</p>
<div class="desk-tools"></div>
<div class="evening-paper on-paper">
<dl class="hands on-paper">${[t`Mentor`, t`Date`, t`Module and phase`].map((name) => html`<div><dt>${name}</dt><dd></dd></div>`)}</dl>
<ol>${Array.from({ length: 12 }, blankRow)}</ol>
</div>
${whereTable(deskWhere)}${seeAlso(from)}</div>`,
  });
}

const outcomes = [t`watched`, t`unaided`, t`not yet, because`, t`stopped for safety`];

const blankRow = (): Html => html`<li class="evening-row"><div>
<p>Name <span class="write"></span></p>
<p>${outcomes.map((outcome) => html`<span class="box"></span>${outcome} `)}<span class="write"></span></p>
</div></li>
`;
