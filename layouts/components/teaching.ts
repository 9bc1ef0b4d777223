/** What helps a hand to learn: how it feels when right, what goes wrong, what to do about it. */
import { t } from "../../src/engine/words.ts";
import type { Mistake, ModuleStep, Remedy } from "../../src/model/module.ts";
import { html } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { box } from "./box.ts";
import { type Line, line } from "./lines.ts";

/** What it feels like, and what to see before going on. */
export function signs({ check, feel }: ModuleStep): Line[] {
  return [
    line(t`It feels`, feel === undefined ? undefined : sentence(capital(feel))),
    line(html`${box}Check`, check === undefined ? undefined : sentence(capital(check)), "check"),
  ];
}

/** Mistakes with what comes of them, and remedies. */
export function troubles({ mistakes, ifNot }: ModuleStep): Line[] {
  return [
    { name: t`Often wrong`, values: mistakes.map(mistakeText) },
    { name: t`If not so`, values: ifNot.map(remedyText) },
  ];
}

const mistakeText = ({ mistake, result }: Mistake) =>
  html`<b>${sentence(capital(mistake))}</b> ${sentence(capital(result))}`;

const remedyText = ({ sign, cause, do: remedy }: Remedy) =>
  html`<b>${sentence(capital(sign))}</b> Likely cause: ${sentence(cause)} ${sentence(capital(remedy))}`;
