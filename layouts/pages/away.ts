/** What stands in place of a page that is not kept on the device, where the network is away. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";

export function awayPage(book: Book): string {
  const from: Address = { kind: "plain", id: "away" };
  const to = (id: string, at?: string) =>
    linkTo(from, { kind: "plain", id, ...(at === undefined ? {} : { at }) });
  return frame({
    address: from,
    title: t`Not on this device`,
    programme: book.site.programme,
    assets: book.assets,
    description: t`What to do where a page is not kept and the network is away.`,
    main: html`<div class="sheet">
<header class="sheet-head"><h1>Not on this device</h1>
<p class="summary">The network is away, and the address that you asked for is not among the pages that are kept here.</p></header>
<div class="prose">
<p>Either there is no such page, as after a slip in the address, or it is new, or it belongs to a module that was never opened on this device. Go back, or go on from here:</p>
<ul>
<li><a href="${to("modules")}">All modules</a></li>
<li><a href="${to("search")}">Search</a> for a step, a screw or a tool</li>
<li><a href="${to("about", "s_offline")}">What is kept on this device</a></li>
</ul>
</div>
</div>`,
  });
}
