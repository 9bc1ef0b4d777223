/** What works on the address at which the desk stands just now. */
import { t } from "../../engine/words.ts";
import { type Here, hereWords } from "../record/here-words.ts";

export function deskWords(here: Here & { readonly isKept: boolean }): string {
  const [place] = hereWords({ ...here, hasCipher: true }).split(" Everything");
  const signs = here.hasCipher
    ? t`Everything on it works here.`
    : t`Files can be looked at and the evening noted down, but nothing signed: browsers keep their cryptography from such addresses.`;
  const keeps = here.isKept
    ? ""
    : t` This browser lets the page keep nothing: what is on it is gone when you leave.`;
  return `${place} ${signs}${keeps}`;
}
