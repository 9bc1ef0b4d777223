/** A signal word on its colour. The style sheet puts the safety alert symbol before all but "notice", which is about damage only. */
import { signalWordNames } from "../../src/engine/signal-words.ts";
import type { SignalWord } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";

export function signalWord(word: SignalWord): Html {
  return html`<b class="signal signal-${word}">${signalWordNames[word]}</b>`;
}
