/** A lost phone: a mentor who knows the trainee signs that the new key goes on for the old one. */

import { publicKeyOfDid } from "../../engine/competency/did-key.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { form, lineField } from "./fields.ts";

export interface NewKeyFormOptions {
  readonly say: (words: string) => void;
  readonly sign: (oldKey: string) => void;
}

export function newKeyForm({ say, sign }: NewKeyFormOptions): HTMLElement {
  const field = lineField("old-key", t`Their old key`, { autocomplete: t`off`, spellcheck: "false" });
  const send = () => {
    const key = field.input.value.trim();
    if (publicKeyOfDid(key) === undefined)
      return say(
        t`That is no key; expected did:key:z6Mk… as it stands in the trainee’s old file, or in what was signed for them.`,
      );
    sign(key);
  };
  return element(
    "details",
    { class: "new-key" },
    element("summary", {}, t`They have lost their key`),
    element(
      "p",
      {},
      t`Where the phone is gone, they begin a new record, and you sign that it is theirs. Only if you know the person: whatever was signed for the old key counts for the new one from then on. Their old file or an old statement names the old key.`,
    ),
    form(
      send,
      field.element,
      element("p", { class: "actions" }, element("button", { type: "submit" }, t`Sign: old key → new key`)),
    ),
  );
}
