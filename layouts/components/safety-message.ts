/** A safety message: signal word, what the hazard is, what comes of it, how to avoid it (ANSI Z535.6, ISO 3864-2). */
import { type Address, linkTo } from "../../src/model/address.ts";
import { type Hazard, signalWords } from "../../src/model/sheet.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { attribute, type Html, html, type Value } from "../html.ts";
import { sentence } from "../words.ts";
import { signalWord } from "./signal-word.ts";

/** `from` is the page it stands on, for the link to the hazard's sheet; `anchor` the id by which short ones lead to it. */
export function safetyMessage(hazard: Hazard, from: Address, anchor?: string): Html {
  const { id, title } = hazard;
  const isItsOwn = from.kind === "hazard" && from.id === id;
  return message(
    hazard,
    isItsOwn ? title : html`<a href="${linkTo(from, { kind: "hazard", id })}">${title}</a>`,
    html`<p>${sentence(hazard.hazard)} <strong>${sentence(hazard.consequence)}</strong></p>
<ul>${hazard.avoid.map((way) => html`<li>${way}</li>`)}</ul>`,
    anchor,
  );
}

/**
 * For a hazard that stands in full at the front of the page: the first way to avoid it and where the others are; with
 * what comes of it, where the reader has not yet met it beside a step.
 */
export function shortSafetyMessage(hazard: Hazard, isFresh: boolean): Html {
  const { id, title, consequence, avoid } = hazard;
  return message(
    hazard,
    title,
    html`<p>${isFresh ? html`<strong>${sentence(consequence)}</strong> ` : undefined}${avoid.slice(0, 1).map(sentence)} <a href="#${messageAnchor(id)}">More at the front</a></p>`,
  );
}

/** The id of the full message at the front. */
export const messageAnchor = (hazard: string): string => `s_hazard-${hazard}`;

/** Signal word and name alone, for where the message stands in full elsewhere. */
export const warningWords = ({ signal, title }: Hazard): Html =>
  html`<span class="row-warning">${signalWord(signal)} ${title}</span>`;

function message({ signal }: Hazard, name: Value, text: Html, anchor?: string): Html {
  return html`<div class="message"${attribute("id", anchor)}>
<p class="message-head">${signalWord(signal)} ${name}</p>
${text}
</div>
`;
}

/** The hazards with these ids that have a sheet, each once, gravest first; equally grave ones keep their order. */
export function hazardsNamed(ids: Iterable<string>, { hazards }: Book): Hazard[] {
  const sheets = [...new Set(ids)].map((id) => hazards.get(id)?.sheet);
  const gravity = ({ signal }: Hazard): number => signalWords.indexOf(signal);
  return sheets.filter((each) => each !== undefined).sort((a, b) => gravity(a) - gravity(b));
}

/** Ids of the hazards that a module or a step of it names. */
export const hazardIds = ({ module, steps }: ModuleView): string[] => [
  ...module.hazards,
  ...steps.flatMap(({ step }) => step.hazards),
];
