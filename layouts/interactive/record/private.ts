/** What is kept and who sees it, in words for volunteers. */
import type { Programme } from "../../../src/model/programme.ts";
import { type Html, html } from "../../html.ts";

export function whatIsKept({ name }: Programme): Html {
  return html`<section class="group" aria-labelledby="s_private">
<h2 id="s_private">What is kept, and who sees it</h2>
<div class="record-private">
<p>Your record is kept in this browser, on this device. There is no account, and ${name} has no copy. It holds what you did here and when: sheets read, hazards acknowledged, answers to quizzes, orders that you put right, runs on paper, and what a mentor has signed for you. Of yourself it holds a name to be shown, and that only if you write one: a first name or a nickname that your mentor knows will do. It has no date of birth, no address, no picture.</p>
<p>Nothing leaves the device by itself. You save a file and hand it to your mentor, who looks at it, signs, and hands it back; a copy of it may stay with them, for the roster. Ask them where it is kept, and to delete it when you leave. Whoever has the file can read all of it, wrong answers too.</p>
<p>Your key is a long secret number that the page made here. With it your files are signed, so that nobody else can hand in work as yours. It stays in this browser unless you save it as a key file. Don’t give that file away, and don’t lend it: a mentor’s signature counts for the key.</p>
<p>On a device that others use, save the file, take it with you, and erase the record here. If you never came back to it, some browsers would clear it away by themselves after a while: what counts is the file.</p>
</div>
</section>
`;
}
