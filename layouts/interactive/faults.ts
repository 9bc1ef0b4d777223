/** Faults to go over: the list that the script makes of what quizzes, practices and dry runs have kept in the browser. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo, linkToFile } from "../../src/model/address.ts";
import type { FaultsData } from "../../src/model/page-data.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";

export const faultsTitle = t`Faults to go over`;

const page: Address = { kind: "plain", id: "faults" };

export function faultsPage({ site: { cards, programme }, assets }: Book): string {
  const link = (kind: keyof FaultsData["links"]): string => linkTo(page, { kind, id: "*" });
  const data: FaultsData = {
    root: linkToFile(page, ""),
    modules: cards.map(({ id, title, revision }) => ({ id, title, revision })),
    links: {
      module: link("module"),
      practice: link("practice"),
      "dry-run": link("dry-run"),
      quiz: link("quiz"),
    },
  };
  return frame({
    address: page,
    title: faultsTitle,
    programme,
    assets,
    scripts: ["faults"],
    description: t`What went wrong in quizzes, practices and dry runs, for the next workshop evening.`,
    data,
    main: html`<div class="sheet faults-page">
<header class="sheet-head"><h1>${faultsTitle}</h1>
<p class="summary">For the next workshop evening, at the machine and with your mentor: what went wrong in quizzes, practices and dry runs in this browser.</p></header>
<p class="faults-rule">A question or step comes onto the list when it goes wrong. It leaves it once it was right again where it went wrong, the next time you do it from the beginning; where the fault would have hurt someone or ruined a part, twice running. Those stand first, then what went wrong most often.</p>
<p class="needs-script">The list is kept in this browser alone. To show it, the page needs JavaScript, which is off or has not come. Without it: mark on your papers what went wrong, and take them along.</p>
<div class="faults-list"></div>
<p class="actions"><button type="button" class="faults-print" hidden>Print the list</button></p>
</div>`,
  });
}

/** The way to the list, from a page on which things go wrong. */
export const faultsLine = (from: Address): Html =>
  html`<p class="to-faults">What goes wrong here comes onto the list of <a href="${linkTo(from, page)}">faults to go over</a>.</p>
`;
