/** A safety message: signal word, what the hazard is, what comes of it, how to avoid it (ANSI Z535.6, ISO 3864-2). */
import { type Address, linkTo } from "../../src/model/address.ts";
import { type Hazard, signalWords } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";
import { sentence } from "../words.ts";
import { signalWord } from "./signal-word.ts";

/** `from` is the page it stands on, for the link to the hazard's sheet. */
export function safetyMessage(hazard: Hazard, from: Address): Html {
  return message(
    hazard,
    from,
    html`<p>${sentence(hazard.hazard)} <strong>${sentence(hazard.consequence)}</strong></p>
<ul>${hazard.avoid.map((way) => html`<li>${way}</li>`)}</ul>`,
  );
}

/** Without the ways to avoid it, which `at` shows: for a hazard that the reader has just met in full. */
export function shortSafetyMessage(hazard: Hazard, from: Address, at: string): Html {
  return message(
    hazard,
    from,
    html`<p><strong>${sentence(hazard.consequence)}</strong> <a href="#${at}">How to avoid it: at the front</a></p>`,
  );
}

function message({ id, signal, title }: Hazard, from: Address, text: Html): Html {
  const isItsOwn = from.kind === "hazard" && from.id === id;
  const name = isItsOwn ? title : html`<a href="${linkTo(from, { kind: "hazard", id })}">${title}</a>`;
  return html`<div class="message">
<p class="message-head">${signalWord(signal)} <span>${name}</span></p>
${text}
</div>
`;
}

/** Gravest first; equal ones keep their order. */
export function byGravity(hazards: readonly Hazard[]): Hazard[] {
  return [...hazards].sort((a, b) => signalWords.indexOf(a.signal) - signalWords.indexOf(b.signal));
}
