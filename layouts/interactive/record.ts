/** "My record": what its owner has done, what is next, and the file that holds it. Without the script it is a log on paper. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkToFile } from "../../src/model/address.ts";
import type { RecordPageData } from "../../src/model/page-data.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { seeAlso } from "./desk/see-also.ts";
import { recordLog } from "./record/log.ts";
import { whatIsKept } from "./record/private.ts";
import { whatWorksWhere } from "./record/where.ts";

export const recordTitle = t`My record`;

/** For a programme that has an identifier; throws a RangeError for one that keeps no records. */
export function recordPage(book: Book): string {
  const { programme } = book.site;
  if (programme.identifier === undefined) throw new RangeError("the programme has no identifier");
  const from: Address = { kind: "plain", id: "record" };
  const data: RecordPageData = { programme: programme.identifier, root: linkToFile(from, "") };
  return frame({
    address: from,
    title: recordTitle,
    programme,
    assets: book.assets,
    scripts: ["record"],
    description: t`What you have read, practised and passed, what was watched, and what you are signed off for.`,
    data,
    main: html`<div class="sheet record-page">
${head(programme.name)}
<p class="needs-script">To fill in this page, it needs JavaScript, which is off or has not come. Without it this is a log to be kept by hand: print it, and let your mentor sign on it.</p>
<div class="record-notes"></div>
<section class="group" aria-labelledby="s_log">
<h2 id="s_log">Module by module</h2>
${recordLog(book, from)}<dl class="hands on-paper record-hands">${[t`Name`, t`Mentor`, t`Date`].map((name) => html`<div><dt>${name}</dt><dd></dd></div>`)}</dl>
</section>
<div class="record-tools"></div>
${whatWorksWhere()}${whatIsKept(programme)}<div class="record-end"></div>
${seeAlso(from)}</div>`,
  });
}

/** The cells of the block are the script's to fill in; on paper they are filled in by hand. */
function head(owner: string): Html {
  const fields = [
    [t`Legal owner of the modules`, owner, ""],
    [t`Document type`, t`Competency record`, ""],
    [t`Name`, "", "name"],
    [t`As of`, "", "date"],
    [t`Key`, "", "key"],
    [t`Saved as a file`, "", "saved"],
  ] as const;
  return html`<header class="title-block">
<div class="title-block-title"><h1>${recordTitle}</h1>
<p>What you have read, practised and passed here, what a mentor has watched, and what you are signed off for.</p></div>
<dl>
${fields.map(([name, value, id]) => html`<div${id !== "" && html` class="record-fact" data-fact="${id}"`}><dt>${name}</dt><dd>${value}</dd></div>\n`)}</dl>
</header>`;
}
