/** The safety messages of a whole module, grouped at its front (ANSI Z535.6, grouped safety messages). */
import type { Address } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { lines } from "./lines.ts";
import { wasted, worn } from "./protection.ts";
import { hazardIds, hazardsNamed, messageAnchor, safetyMessage } from "./safety-message.ts";

export function safety(view: ModuleView, book: Book, from: Address): Html | undefined {
  const hazards = hazardsNamed(hazardIds(view), book);
  const clothes = lines([...worn(view.module), wasted(view.module)]);
  if (hazards.length === 0 && clothes === undefined) return undefined;
  return html`<section class="group" aria-labelledby="s_safety">
<h2 id="s_safety">Safety</h2>
${clothes}<div class="messages">
${hazards.map((each) => safetyMessage(each, from, messageAnchor(each.id)))}</div>
</section>
`;
}
