/** The safety messages of a whole module, grouped at its front (ANSI Z535.6, grouped safety messages). */
import type { Address } from "../../src/model/address.ts";
import type { Hazard } from "../../src/model/sheet.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { protection } from "./protection.ts";
import { byGravity, safetyMessage } from "./safety-message.ts";

export function safety({ module, steps }: ModuleView, book: Book, from: Address): Html | undefined {
  const ids = new Set([...module.hazards, ...steps.flatMap(({ step }) => step.hazards)]);
  const hazards: Hazard[] = [...ids]
    .map((id) => book.hazards.get(id)?.sheet)
    .filter((each) => each !== undefined);
  const worn = protection(module, ["wear", "neverWear", "waste"]);
  if (hazards.length === 0 && worn === undefined) return undefined;
  return html`<section class="group safety" aria-labelledby="_safety">
<h2 id="_safety">Safety</h2>
${byGravity(hazards).map((each) => safetyMessage(each, from))}${worn}</section>
`;
}
