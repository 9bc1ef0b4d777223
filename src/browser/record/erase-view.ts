/** Erasing everything on this device. */
import { t } from "../../engine/words.ts";
import { askTwice } from "../page/ask-twice.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";

export interface EraseOptions {
  /** How many entries are in no file yet, and how many there are. */
  readonly counts: () => { readonly unsaved: number; readonly total: number };
  readonly erase: () => Promise<void>;
}

export function eraseView({ counts, erase }: EraseOptions): HTMLElement {
  const said = element("p", { role: "status" });
  const act = async (): Promise<void> => {
    said.textContent = await erase().then(
      () => t`Erased. What you do from now on goes into a new record, under a new key.`,
      () => t`It could not be erased here. Clear what this site has stored in the settings of the browser.`,
    );
  };
  const ask = askTwice({
    text: t`Erase everything on this device`,
    loss: () => lossWords(counts()),
    yes: t`Yes, erase it all`,
    no: t`No, keep it`,
    act: () => void act(),
  });
  return element(
    "section",
    { class: "group record-erase", "aria-labelledby": "s_erase" },
    element("h2", { id: "s_erase" }, t`Erase`),
    element("p", {}, what),
    ask,
    said,
  );
}

const what = t`Takes away the record, the name and the key, and what practice, dry run, quiz, faults to go over and bench view remember in this browser. Files that you have saved or handed over stay where they are.`;

function lossWords({ unsaved, total }: { readonly unsaved: number; readonly total: number }): string {
  const entries =
    total === 0
      ? t`The record is empty; its key goes.`
      : unsaved === 0
        ? t`All of its ${counted(total, "entry", "entries")} are in a file that you have saved.`
        : t`${counted(unsaved, "entry is", "entries are")} in no file and will be gone for good.`;
  return t`${entries} The key goes too, unless you have saved it as a key file: nothing more can be added to the record without it. Erase everything?`;
}
