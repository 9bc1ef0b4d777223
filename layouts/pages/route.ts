/** The route sheet: from a first evening to working alone, as a plain table made from what modules need. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { asksOfAll, standingAsks } from "../components/route-asks.ts";
import { levelNames, routeTable } from "../components/route-table.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { capital, sentence } from "../words.ts";

export const routeTitle = t`Route sheet`;

export function routePage(book: Book): string {
  const from: Address = { kind: "plain", id: "route" };
  const { programme, cards } = book.site;
  return frame({
    address: from,
    title: routeTitle,
    programme,
    assets: book.assets,
    description: t`From a first evening to working alone: which modules come in which stage, and what is signed for.`,
    main: html`<div class="sheet route-sheet">
<header class="sheet-head"><p class="sheet-kind on-screen"><a href="${linkTo(from, { kind: "plain", id: "modules" })}">Modules</a></p>
<p class="sheet-kind on-paper">${[programme.name, programme.place].filter((text) => text !== undefined).join(", ")}</p>
<h1>${routeTitle}</h1>
<p class="summary">From a first evening to working alone. Within a stage the order is yours; what a module needs stands in an earlier stage.</p></header>
<dl class="hands on-paper">${[t`Name`, t`First evening`, t`Mentors`].map((name) => html`<div><dt>${name}</dt><dd></dd></div>`)}</dl>
${cards.length === 0 ? html`<p>No module yet.</p>\n` : routeTable(book, from)}${signed(book)}</div>`,
  });
}

/** What each level means, and what the programme asks of everybody. */
function signed({ site: { programme, cards } }: Book): Html {
  const asks = [...asksOfAll(cards), ...standingAsks(programme.signOff)];
  return html`<section class="group" aria-labelledby="s_signed"><h2 id="s_signed">What is signed for</h2>
<dl class="lines route-levels">
${levelNames.map((name, at) => html`<div><dt>${name}</dt><dd>${meanings[at]}</dd></div>\n`)}</dl>
${asks.length === 0 ? undefined : html`<p><b>For every module:</b> ${sentence(capital(asks.join("; ")))}</p>\n`}<p>High-energy steps are never done alone, whatever is signed: someone who can call for help is in the room.</p>
</section>
`;
}

const meanings = [
  t`May do it while a mentor looks on. The quiz is asked for; being watched comes with it.`,
  t`May do it alone. All that is asked for, of every module and of this one, has been done and watched.`,
  t`May do it alone, and teach it. A mentor says so, beyond what is asked for.`,
] as const;
