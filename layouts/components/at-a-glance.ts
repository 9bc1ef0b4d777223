/** What one wants to know before reading: time, what is needed; and the module's other pages. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { modulePages } from "../module-pages.ts";
import { counted, duration } from "../words.ts";
import { line, lines } from "./lines.ts";
import { neededModules } from "./needed-modules.ts";

export function atAGlance(view: ModuleView, book: Book, from: Address, contents?: Html): Html {
  const takes = view.steps.length === 0 ? undefined : times(view);
  return html`<aside class="glance" aria-label="At a glance">
${lines([line(t`Takes`, takes), line(t`Needs`, neededModules(view.module, book, from))])}${otherPages(view, from)}${contents}</aside>
`;
}

function times({ card: { steps, handsOn, waits } }: ModuleView): string {
  const words = [
    counted(steps.length, "step"),
    handsOn > 0 ? t`${duration(handsOn)} of work` : undefined,
    waits > 0 ? t`${duration(waits)} of waiting` : undefined,
  ];
  return words.filter((each) => each !== undefined).join(", ");
}

function otherPages(view: ModuleView, from: Address): Html | undefined {
  const pages = modulePages.filter(({ has }) => has(view.card));
  if (pages.length === 0) return undefined;
  return html`<nav aria-label="This module">
<ul>${pages.map(({ kind, phrase }) => html`<li><a href="${linkTo(from, { kind, id: view.module.id })}">${phrase}</a></li>`)}</ul>
</nav>
`;
}
