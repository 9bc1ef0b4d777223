/** The safety messages of a whole module, grouped at its front (ANSI Z535.6, grouped safety messages). */
import type { Address } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { lines } from "./lines.ts";
import { wasted, worn } from "./protection.ts";
import { byGravity, messageAnchor, safetyMessage } from "./safety-message.ts";

export function safety({ module, steps }: ModuleView, book: Book, from: Address): Html | undefined {
  const ids = new Set([...module.hazards, ...steps.flatMap(({ step }) => step.hazards)]);
  const hazards = [...ids].map((id) => book.hazards.get(id)?.sheet).filter((each) => each !== undefined);
  const clothes = lines([...worn(module), wasted(module)]);
  if (hazards.length === 0 && clothes === undefined) return undefined;
  return html`<section class="group" aria-labelledby="s_safety">
<h2 id="s_safety">Safety</h2>
${clothes}<div class="messages">
${byGravity(hazards).map((each) => safetyMessage(each, from, messageAnchor(each.id)))}</div>
</section>
`;
}
