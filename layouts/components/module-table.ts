import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { duration } from "../words.ts";

/** All modules: what each is, what it needs, how long it takes, its pages. */
export function moduleTable(book: Book, from: Address): Html {
  if (book.site.modules.length === 0) return html`<p>No module yet.</p>`;
  return html`<table class="ruled modules">
<thead><tr><th scope="col">Module</th><th scope="col">Needs</th><th scope="col">Takes</th><th scope="col">Pages</th></tr></thead>
<tbody>
${book.site.modules.map((view) => row(view, book, from))}</tbody>
</table>`;
}

function row(view: ModuleView, book: Book, from: Address): Html {
  const { module } = view;
  const needs = module.needs.map(
    (id) =>
      html`<a href="${linkTo(from, { kind: "module", id })}">${book.modules.get(id)?.module.title ?? id}</a>`,
  );
  return html`<tr><th scope="row"><a href="${linkTo(from, { kind: "module", id: module.id })}">${module.title}</a> <span class="summary">${module.summary}</span></th><td data-name="Needs">${needs.length === 0 ? "—" : join(needs, "; ")}</td><td data-name="Takes">${takes(view)}</td><td data-name="Pages">${pages(view, from)}</td></tr>
`;
}

function takes({ steps, handsOn, waits }: ModuleView): Html {
  if (steps.length === 0) return html`—`;
  return html`${handsOn > 0 ? duration(handsOn) : undefined} <small>${steps.length} steps${waits > 0 ? `, ${duration(waits)} of waiting` : ""}</small>`;
}

function pages({ module, steps, practices, quiz }: ModuleView, from: Address): Html {
  const views = [
    steps.length > 0 && { kind: "bench" as const, name: "Bench" },
    practices.length > 0 && { kind: "practice" as const, name: "Practice" },
    quiz !== undefined && { kind: "quiz" as const, name: "Quiz" },
  ].filter((each) => each !== false);
  if (views.length === 0) return html`—`;
  return join(
    views.map(({ kind, name }) => html`<a href="${linkTo(from, { kind, id: module.id })}">${name}</a>`),
    ", ",
  );
}
