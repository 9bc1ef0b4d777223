/** The tools of a module, and the steps that want each. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { box } from "./box.ts";
import { stepRanges } from "./step-links.ts";

export function tools({ module, steps }: ModuleView, book: Book, from: Address): Html | undefined {
  if (module.tools.length === 0) return undefined;
  return html`<h3>Tools</h3>
<ul class="columns tools">
${module.tools.map((id) => {
  const using = steps.filter(({ step }) => step.tools.includes(id));
  return html`<li>${box}<a href="${linkTo(from, { kind: "tool", id })}">${book.tools.get(id)?.sheet.title ?? id}</a> ${stepRanges(using)}</li>\n`;
})}</ul>
`;
}
