/** What helps a hand to learn: how it feels when right, what goes wrong, what to do about it. */
import type { Mistake, ModuleStep, Remedy } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { capital, sentence } from "../words.ts";

/** What to see before going on, and what it feels like. */
export function signs({ check, feel }: ModuleStep): Html | undefined {
  if (check === undefined && feel === undefined) return undefined;
  return html`<dl class="lines">
${feel === undefined ? undefined : html`<div><dt>It feels</dt><dd>${sentence(capital(feel))}</dd></div>\n`}${check === undefined ? undefined : html`<div class="check"><dt>Check</dt><dd>${sentence(capital(check))}</dd></div>\n`}</dl>
`;
}

/** Mistakes with what comes of them, and remedies. */
export function troubles({ mistakes, ifNot }: ModuleStep): Html | undefined {
  if (mistakes.length === 0 && ifNot.length === 0) return undefined;
  return html`<dl class="lines troubles">
${mistakes.length === 0 ? undefined : html`<div><dt>Often wrong</dt>${mistakes.map(mistakeLine)}</div>\n`}${ifNot.length === 0 ? undefined : html`<div><dt>If not so</dt>${ifNot.map(remedyLine)}</div>\n`}</dl>
`;
}

const mistakeLine = ({ mistake, result }: Mistake) =>
  html`<dd><b>${sentence(capital(mistake))}</b> ${sentence(capital(result))}</dd>`;

const remedyLine = ({ sign, cause, do: remedy }: Remedy) =>
  html`<dd><b>${sentence(capital(sign))}</b> Likely cause: ${sentence(cause)} ${sentence(capital(remedy))}</dd>`;
