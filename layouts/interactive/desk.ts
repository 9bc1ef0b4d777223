/** "Mentor's desk": trainees' files are looked at, what was watched is written down, and signed. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { whereTable } from "../components/where-table.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";
import { recordPageData } from "./desk/identified.ts";
import { seeAlso } from "./desk/see-also.ts";
import { deskWhere } from "./desk/where.ts";

/** For a programme that has an identifier; throws a RangeError for one that keeps no records. */
export function deskPage(book: Book): string {
  const { programme } = book.site;
  const from: Address = { kind: "plain", id: "desk" };
  return frame({
    address: from,
    title: t`Mentor’s desk`,
    programme,
    assets: book.assets,
    scripts: ["desk"],
    description: t`For mentors: look at trainees’ files, write down what you watched, and sign.`,
    data: recordPageData(programme, from),
    main: html`<div class="sheet record-page desk-page">
<header class="title-block">
<div class="title-block-title"><h1>Mentor’s desk</h1>
<p>Open the files that trainees hand you. What they did is marked again here; what you watched you write down and sign; what you signed they take home as a file. All of it happens on this device: nothing is sent anywhere.</p></div>
</header>
<p class="needs-script">To look at files and to sign, this page needs JavaScript, which is off or has not come. Without it, watch with a printed sheet and sign on paper.</p>
<div class="desk-tools"></div>
${whereTable(deskWhere)}<section class="group" aria-labelledby="s_private">
<h2 id="s_private">What lies on the desk</h2>
<div class="record-private">
<p>Trainees’ files stay on this device until you clear the desk, and so does what you signed. They hold names and wrong answers: don’t leave them on a device that others use. Your key signs for as long as it is here. If the device is lost, or you think that someone else has signed with the key, tell the coordinator on the same day: the programme then counts only what it knows to be yours.</p>
<p>Sign for what you saw. The engine refuses what ${programme.name} does not let you sign, your own record, and a sign-off whose evidence is missing; whether the work was good, and whether it is safe to let someone go on alone, nobody but you can say. Where you are not sure, write “not yet”.</p>
</div>
</section>
${seeAlso(from)}</div>`,
  });
}
