/** The safety messages of the whole programme, large, for the wall. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Programme } from "../../src/model/programme.ts";
import { type Hazard, signalWords } from "../../src/model/sheet.ts";
import type { Book } from "../book.ts";
import { signalWord } from "../components/signal-word.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { paperChoice } from "../paper/choice.ts";
import { sentence } from "../words.ts";

const from: Address = { kind: "plain", id: "poster" };
export const posterTitle = t`Safety messages`;

export function posterPage(book: Book): string {
  const { programme } = book.site;
  const hazards = usedHazards(book);
  return frame({
    address: from,
    title: posterTitle,
    programme,
    assets: book.assets,
    scripts: ["paper"],
    styles: [book.assets.paperStyle],
    description: t`The safety messages of all modules, the gravest first, to be printed for the wall.`,
    main: html`<div class="sheet poster">
<header class="sheet-head"><p class="sheet-kind on-screen"><a href="${linkTo(from, { kind: "plain", id: "hazards" })}">Hazards</a></p>
<h1>${posterTitle}</h1>
<p class="poster-place">${[programme.name, programme.place].filter((each) => each !== undefined).join(", ")}</p></header>
${first(programme)}${paperChoice([], programme)}${hazards.length === 0 ? html`<p>No module names a hazard yet.</p>\n` : hazards.map((hazard) => panel(hazard))}</div>`,
  });
}

const first = ({ emergency }: Programme): Html => html`<div class="poster-first">
${emergency === undefined ? undefined : html`<p><b>In an emergency:</b> ${emergency}</p>\n`}<p>The safety data sheet of a substance, the maker’s instructions, local rules, licensed practice and the mentor beside you go before this poster. Where they differ, they decide.</p>
</div>
`;

/** Those that a module or a step names, gravest first, then by title. */
function usedHazards(book: Book): Hazard[] {
  const used = [...book.hazards.values()].filter(({ usedBy }) => usedBy.length > 0).map(({ sheet }) => sheet);
  const { compare } = new Intl.Collator(book.site.programme.language);
  const gravity = ({ signal }: Hazard) => signalWords.indexOf(signal);
  return used.sort((a, b) => gravity(a) - gravity(b) || compare(a.title, b.title));
}

const panel = ({
  id,
  signal,
  title,
  hazard,
  consequence,
  avoid,
}: Hazard): Html => html`<section class="panel" aria-labelledby="s_${id}">
<p class="panel-word">${signalWord(signal)}</p>
<h2 id="s_${id}">${title}</h2>
<p class="panel-consequence"><strong>${sentence(consequence)}</strong></p>
<p>${sentence(hazard)}</p>
<ul>${avoid.map((way) => html`<li>${sentence(way)}</li>`)}</ul>
<p class="panel-foot">Safety data sheet, maker’s instructions, local rules and the mentor beside you go before this.</p>
</section>
`;
