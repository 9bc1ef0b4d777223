/** How to read an operation sheet, shown with a real tray of the programme. */

import type { TrayAccount } from "../../src/engine/procedure/tray-account.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleCard } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { trayAccounts } from "../tray/account.ts";
import { tray } from "../tray/tray.ts";

/** Undefined for a programme without steps. */
export function specimen(book: Book, from: Address): Html | undefined {
  const id = specimenModule(book.site.cards);
  const view = book.site.modules.find(({ module }) => module.id === id);
  if (view === undefined) return undefined;
  const accounts = trayAccounts(view);
  const index = tellingTray(accounts);
  const { step, number } = view.steps[index]!;
  return html`<section class="group specimen" aria-labelledby="s_specimen">
<div><h2 id="s_specimen">How to read a sheet</h2>
<p>The large figure in the margin is the step. What guards it stands before it. Beside it stands the tray: everything that is off the machine once the step is done, counted, compartment by compartment.</p>
<p>The one shown here is from <a href="${linkTo(from, { kind: "module", id: view.module.id, at: step.id })}">step ${number}</a> of “${view.module.title}”. A figure with a plus has just come off, one with a minus has just gone back on. Count what lies before you. If it is not what stands there, stop and look for it now.</p>
<p>Screws that are slack but still in, and how a spring stands, are written beneath the total. At the end the total is 0.</p></div>
${tray(accounts[index]!, number)}
</section>
`;
}

/**
 * The module whose tray the home page shows, which must be among the site's views where that page is made: of those that take
 * something off, else of all, the one with most steps, whatever the order of the cards. O(modules).
 */
export function specimenModule(cards: readonly ModuleCard[]): string | undefined {
  const filling = cards.filter(({ fillsTray }) => fillsTray);
  const able = filling.length > 0 ? filling : cards.filter(({ steps }) => steps.length > 0);
  const most = Math.max(...able.map(({ steps }) => steps.length));
  return able
    .filter(({ steps }) => steps.length === most)
    .map(({ id }) => id)
    .sort()[0];
}

/** The first tray that shows most: additions and returns, slack screws, several compartments, without being long. */
function tellingTray(accounts: readonly TrayAccount[]): number {
  const points = accounts.map(tellingPoints);
  return points.indexOf(Math.max(...points));
}

function tellingPoints({ compartments, slack, states }: TrayAccount): number {
  const entries = compartments.flatMap((each) => each.entries);
  const shows = (is: boolean) => (is ? 4 : 0);
  return (
    Math.min(compartments.length, 5) +
    shows(entries.some(({ change }) => change > 0)) +
    shows(slack.length > 0) +
    shows(states.some(({ was }) => was !== undefined)) -
    Math.max(0, entries.length - 9)
  );
}
