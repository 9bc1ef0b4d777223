/** What has to be so before work begins: modules signed off, time, conditions of the machine, its state as found. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { counted, duration } from "../words.ts";
import { checks } from "./checks.ts";
import { conditions } from "./conditions.ts";

export function beforeWork(view: ModuleView, book: Book, from: Address): Html {
  return html`<section class="group before-work" aria-labelledby="_before-work">
<h2 id="_before-work">Before work</h2>
<dl class="lines">
<div><dt>Needs</dt><dd>${needed(view, book, from)}</dd></div>
${view.steps.length === 0 ? undefined : html`<div><dt>Takes</dt><dd>${times(view)}</dd></div>\n`}</dl>
${conditions(view, book)}${checks(view.module.asFound, "As found", "Found")}</section>
`;
}

function needed({ module }: ModuleView, book: Book, from: Address): Html {
  if (module.needs.length === 0) return html`No other module`;
  const links = module.needs.map(
    (id) =>
      html`<a href="${linkTo(from, { kind: "module", id })}">${book.modules.get(id)?.module.title ?? id}</a>`,
  );
  return html`Signed off first: ${join(links, "; ")}`;
}

function times({ steps, handsOn, waits }: ModuleView): string {
  return [
    counted(steps.length, "step"),
    handsOn > 0 ? `${duration(handsOn)} of work` : undefined,
    waits > 0 ? `${duration(waits)} of waiting` : undefined,
  ]
    .filter((each) => each !== undefined)
    .join(", ");
}
