/** The search page: an alphabetical index of all pages, in whose place the script puts what it finds. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo, linkToFile } from "../../src/model/address.ts";
import type { SearchPageData } from "../../src/model/page-data.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { routeTitle } from "../pages/route.ts";
import { threadChartTitle } from "../pages/threads.ts";
import { faultsTitle } from "./faults.ts";
import { recordTitle } from "./record.ts";
import { sumsTitle } from "./sums.ts";

const kindNames: SearchPageData["kinds"] = {
  module: t`module`,
  order: t`order of steps`,
  bench: t`bench view`,
  paper: t`sheets on paper`,
  practice: t`practice`,
  "dry-run": t`dry run`,
  quiz: t`quiz`,
  "quiz-key": t`key to a quiz`,
  tool: t`tool`,
  substance: t`substance`,
  hazard: t`hazard`,
  plain: t`page`,
};

const from: Address = { kind: "plain", id: "search" };

export function searchPage(book: Book): string {
  const data: SearchPageData = {
    root: linkToFile(from, ""),
    kinds: kindNames,
    words: book.site.programme.words,
  };
  return frame({
    address: from,
    title: t`Search`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: ["search-index", "search"],
    description: t`Find a module, a step, a tool, a substance, a hazard, a part, a thread or a sum.`,
    data,
    main: html`<div class="sheet search">
<header class="sheet-head"><h1>Search</h1></header>
<form class="search-form" role="search" hidden>
<label for="search-query">Module, step, tool, substance, part, thread or sum</label>
<p class="search-field"><input type="search" id="search-query" name="q" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="search" maxlength="200" aria-describedby="search-hint"> <button type="submit">Find</button></p>
<p id="search-hint" class="small">Enter or the down arrow goes to what is found; there, the arrows go up and down, and Enter opens.</p>
</form>
<p class="search-status" role="status"></p>
<section class="search-results" aria-label="Found" hidden><div class="found-groups"></div></section>
<section class="search-index" aria-labelledby="search-index">
<h2 id="search-index">All pages, by title</h2>
${index(book)}</section>
</div>`,
  });
}

interface Entry {
  readonly address: Address;
  readonly title: string;
}

const recordEntry: Entry = { address: { kind: "plain", id: "record" }, title: recordTitle };

function index(book: Book): Html {
  const entries: Entry[] = [
    ...book.site.cards.map((module) => ({
      address: { kind: "module" as const, id: module.id },
      title: module.title,
    })),
    ...book.site.sheets.map(({ sheet }) => ({
      address: { kind: sheet.kind, id: sheet.id },
      title: sheet.title,
    })),
    ...(book.site.programme.identifier === undefined ? [] : [recordEntry]),
    { address: { kind: "plain", id: "route" }, title: routeTitle },
    { address: { kind: "plain", id: "faults" }, title: faultsTitle },
    { address: { kind: "plain", id: "sums" }, title: sumsTitle },
    { address: { kind: "plain", id: "sums/threads" }, title: threadChartTitle },
  ];
  const { compare } = new Intl.Collator(book.site.programme.language);
  entries.sort((a, b) => compare(a.title, b.title));
  return html`<ul class="index">
${entries.map(({ address, title }) => html`<li><a href="${linkTo(from, address)}">${title}</a> <span>${kindNames[address.kind]}</span></li>\n`)}</ul>
`;
}
