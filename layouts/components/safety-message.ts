/** A safety message: signal word, what the hazard is, what comes of it, how to avoid it (ANSI Z535.6, ISO 3864-2). */
import { type Address, linkTo } from "../../src/model/address.ts";
import { type Hazard, signalWords } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { alertSymbol } from "./alert-symbol.ts";

/** `from` is the page it stands on, for the link to the hazard's sheet. */
export function safetyMessage(hazard: Hazard, from: Address): Html {
  return html`<div class="message message-${hazard.signal}">
<p class="message-word">${hazard.signal === "notice" ? undefined : alertSymbol}${capital(hazard.signal)}</p>
<div class="message-text"><p><a href="${linkTo(from, { kind: "hazard", id: hazard.id })}">${hazard.title}</a></p>
${hazardText(hazard)}</div>
</div>
`;
}

/** The three parts that every safety message has. */
export function hazardText({ hazard, consequence, avoid }: Hazard): Html {
  return html`<p>${sentence(hazard)} <strong>${sentence(consequence)}</strong></p>
<ul>${avoid.map((way) => html`<li>${way}</li>`)}</ul>`;
}

/** Gravest first; equal ones keep their order. */
export function byGravity(hazards: readonly Hazard[]): Hazard[] {
  return [...hazards].sort((a, b) => signalWords.indexOf(a.signal) - signalWords.indexOf(b.signal));
}
