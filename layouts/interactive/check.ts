/** "Check a sign-off": whoever is handed a file sees what it is worth, on their own device. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { type WhereRow, whereTable } from "../components/where-table.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";
import { recordPageData } from "./desk/identified.ts";
import { seeAlso } from "./desk/see-also.ts";

const rows: readonly WhereRow[] = [
  { what: t`Choosing a file and having it checked`, secure: t`yes`, http: t`yes`, disk: t`yes` },
  { what: t`Dropping a file on the page`, secure: t`yes`, http: t`yes`, disk: t`yes` },
  {
    what: t`The newest withdrawals`,
    secure: t`as the site was built`,
    http: t`as the copy on that network was built; someone on it could have put another in its place`,
    disk: t`as that copy was built`,
  },
];

/** For a programme that has an identifier; throws a RangeError for one that keeps no records. */
export function checkPage(book: Book): string {
  const { programme } = book.site;
  const from: Address = { kind: "plain", id: "check" };
  return frame({
    address: from,
    title: t`Check a sign-off`,
    programme,
    assets: book.assets,
    scripts: ["check"],
    description: t`Choose a record or a signed statement and see whether it holds, and why not.`,
    data: recordPageData(programme, from),
    main: html`<div class="sheet record-page check-page">
<header class="title-block">
<div class="title-block-title"><h1>Check a sign-off</h1>
<p>Choose the file that you were given: a trainee’s record (.record.json), or what a mentor signed (.signed.json). It is looked at here, on this device, by the rules of ${programme.name}, as of today. It is sent nowhere, and nothing of it is kept.</p></div>
</header>
<p class="needs-script">To check a file, this page needs JavaScript, which is off or has not come. With the tool at hand, benchwright record check does the same.</p>
<div class="check-tool"></div>
<div class="check-found"></div>
<section class="group" aria-labelledby="s_what">
<h2 id="s_what">What is looked at</h2>
<div class="record-private">
<p>That the file is whole and as its owner saved it. That each statement was signed by its mentor and not changed since; that the programme lists that mentor, for that module and at that time; that they did not sign for themselves. That it is about the owner of the record, is in date, was not withdrawn, and is on a text that the programme released. Answers, orders and runs on paper are marked again from what was answered: what a page once said of them counts for nothing.</p>
<p>What it can’t tell: whether the person before you is the one whose key it is. Ask someone who knows them. And a sign-off speaks of one module; local rules, licensed practice and whoever answers for the place decide what may be done there.</p>
</div>
</section>
${whereTable(rows)}${seeAlso(from)}</div>`,
  });
}
