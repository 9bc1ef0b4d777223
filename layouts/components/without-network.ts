/** What the page about the site says of use without a network; the script adds how it stands on this device. */
import { keptAtOnce } from "../../src/model/edition.ts";
import { type Html, html } from "../html.ts";

/** For a site that is kept on devices. */
export const withoutNetwork = (): Html => html`<h2 id="s_offline">Without a network</h2>
<p>After one visit the site works without a network, where it comes over https: modules, quizzes, the bench view, search, your record. A site of more than ${Math.round(keptAtOnce / 1e6)} MB would use up mobile data and the room that a phone gives to a site, so of a larger one each module is kept when you first open it, and all of it when you ask for that here. A newer edition is fetched whole before any of it is shown; a line at the top of the page says when it is ready.</p>
<div class="kept-here">
<p class="needs-script">Keeping the site needs JavaScript, which is off or has not come.</p>
</div>
`;
