/** What the site is, how it is made, and what it does not replace. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { withoutNetwork } from "../components/without-network.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";

export function aboutPage(book: Book): string {
  const { programme } = book.site;
  const address: Address = { kind: "plain", id: "about" };
  return frame({
    address,
    title: t`About`,
    programme,
    assets: book.assets,
    scripts: ["keep"],
    description: t`What this site is, how it is made, and what it does not replace.`,
    main: html`<div class="sheet">
<header class="sheet-head"><h1>About</h1>
<p class="summary">The operation sheets of ${programme.name}, for those who learn to overhaul machines here and those who teach them.</p></header>
<div class="prose">
<h2 id="s_replaces">What it does not replace</h2>
<p>These sheets are written from the experience of a workshop. They don’t replace a substance’s safety data sheet and label, the maker’s instructions, the rules of the place where you work, work that only a licensed person may do, or the mentor beside you. Where any of them says something else, it decides. If you are not sure, stop: a machine that has waited for decades can wait for a week.</p>
${programme.emergency === undefined ? undefined : html`<p><strong>In an emergency:</strong> ${programme.emergency}</p>`}
<h2 id="s_alone">If you work alone</h2>
<p>A mentor is someone who has done the work often and stands beside you at the first times. Where there is nobody, begin with the modules that need no other and with machines of your own that nobody would miss. Practise the order and go through the sheet on paper before you touch a screw; take a picture before each step; leave off where the sheet says that one may. At what you don’t understand, leave the machine as it is until you have asked someone who has done it.</p>
<p>High-energy steps are never done alone, however often you have done them: a spring or weight under power, mains electricity, anything that turns under power, flammable vapour, and whatever a safety message calls a danger. Someone who knows what you are doing is in the room, and can turn things off and call for help. What the makers and the rules of the place say about working alone decides.</p>
<h2 id="s_made">How it is made</h2>
<p>Each module is a text file in which an experienced repairer says what each step takes off, puts back or works on. From that is worked out which step must come before which, and why, and what lies on the tray after each. A sheet whose parts don’t come out even is not published: every screw that comes out has to go back in, unless the sheet says that it stays out.</p>
<p>The revision in the title block is raised when the way of working changes. A sheet on paper may be older than the one here; compare the revision.</p>
${
  book.authors &&
  html`<p>Who writes modules finds all fields, with examples, on the <a href="${linkTo(address, { kind: "plain", id: "authors" })}">page for authors</a>.</p>
`
}<h2 id="s_private">What it asks of your device</h2>
<p>The pages are plain files. Nothing is fetched from anywhere but this site; there are no accounts, and nobody is counted or followed. Every sheet can be read and printed without scripts; the bench view, practice, quiz, bench sums and search need them. What you do there stays on your device.</p>
${book.assets.scripts.has("offline") ? withoutNetwork() : undefined}<h2 id="s_signs">Signs that it uses</h2>
<p>Title blocks have the fields of ISO 7200. Signal words for the work are those of ANSI Z535 and ISO 3864: danger will kill or maim if it is not avoided, warning could, caution may injure less gravely, notice is about damage to things. Pictograms and signal words of substances are those of the Globally Harmonized System (GHS) of the United Nations; they are about the substance in its can, not about the work.</p>
</div>
</div>`,
  });
}
