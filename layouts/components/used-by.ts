/** Which modules and steps use a tool or substance, or name a hazard. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { SheetView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";

export function usedBy({ usedBy }: SheetView, title: string, from: Address): Html {
  return html`<section class="group" aria-labelledby="s_used">
<h2 id="s_used">${title}</h2>
${usedBy.length === 0 ? html`<p>No module yet.</p>` : html`<ul class="used-by">${usedBy.map((use) => moduleUse(use, from))}</ul>`}
</section>
`;
}

function moduleUse({ module, steps }: SheetView["usedBy"][number], from: Address): Html {
  const links = steps.map(
    ({ id, title, number }) =>
      html`<li><a href="${linkTo(from, { kind: "module", id: module.id, at: id })}"><b>${number}</b> ${title}</a></li>`,
  );
  return html`<li><a href="${linkTo(from, { kind: "module", id: module.id })}">${module.title}</a>${links.length === 0 ? undefined : html`<ol>${join(links, "")}</ol>`}</li>
`;
}
