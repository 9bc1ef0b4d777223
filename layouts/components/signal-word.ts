/** A signal word on its colour; the safety alert symbol stands before all but "notice", which is about damage only. */
import type { SignalWord } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";
import { capital } from "../words.ts";
import { alertSymbol } from "./alert-symbol.ts";

export function signalWord(word: SignalWord): Html {
  return html`<b class="signal signal-${word}">${word === "notice" ? undefined : alertSymbol}${capital(word)}</b>`;
}
