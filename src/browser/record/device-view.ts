/** To another device: the key in a file under a passphrase, and taken up again there. */

import { shortestPassphrase } from "../../engine/competency/key-file.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

export interface DeviceActions {
  /** Gives the name of the file. Rejects where the browser has no cipher here. */
  readonly saveKey: (passphrase: string) => Promise<string>;
  /** Takes up the key of a file; gives in words why not. */
  readonly takeKey: (text: string, passphrase: string) => Promise<string | undefined>;
  readonly hasCipher: boolean;
}

/** A key file has some hundred bytes. */
const largestKeyFile = 10_000;

export function deviceView(actions: DeviceActions): HTMLElement {
  const said = element("p", { role: "status" });
  const say = (words: string): void => {
    said.textContent = words;
  };
  return element(
    "section",
    { class: "group record-device", "aria-labelledby": "s_device" },
    element("h2", { id: "s_device" }, t`On another device`),
    element("p", {}, how),
    ...(actions.hasCipher
      ? [element("div", { class: "key-forms" }, saveForm(actions, say), takeForm(actions, say)), said]
      : [element("p", { class: "warning" }, noCipher)]),
  );
}

const how = t`Your key goes along in a file of its own, locked with a passphrase. Here: save the record and the key as files. There: take up the key first, then add the record to it. From then on both devices write under the same key; now and then add the file of the one to the other. If you have lost the key, a mentor can sign that a new one goes on for it.`;
const noCipher = t`Not from this address: browsers give the cipher that locks the key to secure addresses only. Open the site by https, or from a disk, or save the record alone and let a mentor sign your key on the other device over to it.`;

function passphraseField(
  id: string,
  label: string,
  autocomplete: string,
): [HTMLLabelElement, HTMLInputElement] {
  const input = element("input", { type: "password", id, autocomplete, required: true });
  return [element("label", { for: id }, label), input];
}

function saveForm({ saveKey }: DeviceActions, say: (words: string) => void): HTMLFormElement {
  const [label, first] = passphraseField(
    "key-new",
    t`Passphrase, ${shortestPassphrase} letters or more`,
    "new-password",
  );
  const [again, second] = passphraseField("key-again", t`The same once more`, "new-password");
  const submit = element("button", { type: "submit" }, t`Save my key as a file`);
  const save = async (): Promise<void> => {
    const length = [...first.value].length;
    if (length < shortestPassphrase)
      return say(
        t`The passphrase has ${length} letters; take ${shortestPassphrase} or more, such as four words.`,
      );
    if (first.value !== second.value) return say(t`The two passphrases are not the same. Write them again.`);
    await saveKey(first.value).then(
      (name) =>
        say(
          t`Saved as ${name}. Without the passphrase nobody can use it, you neither: nothing here remembers it.`,
        ),
      () => say(t`The key could not be locked. Nothing was saved.`),
    );
    for (const field of [first, second]) field.value = "";
  };
  return form(t`From this device`, save, label, first, again, second, submit);
}

function takeForm({ takeKey }: DeviceActions, say: (words: string) => void): HTMLFormElement {
  const file = element("input", {
    type: "file",
    id: "key-file",
    accept: ".json,application/json",
    required: true,
  });
  const [label, passphrase] = passphraseField("key-old", t`Its passphrase`, t`off`);
  const submit = element("button", { type: "submit" }, t`Take up this key`);
  const take = async (): Promise<void> => {
    const [chosen] = file.files ?? [];
    if (chosen === undefined) return say(t`Choose the key file first; it ends in .key.json.`);
    const refusal = await takeKey(await chosen.slice(0, largestKeyFile).text(), passphrase.value);
    passphrase.value = "";
    say(refusal ?? t`Taken up. Now add your record’s file, above.`);
  };
  const fileLabel = element("label", { for: "key-file" }, t`Key file`);
  return form(t`To this device`, take, fileLabel, file, label, passphrase, submit);
}

function form(title: string, submit: () => Promise<void>, ...fields: HTMLElement[]): HTMLFormElement {
  const made = element("form", { class: "key-form" }, element("h3", {}, title), ...fields);
  made.noValidate = true;
  made.addEventListener("submit", (event) => {
    event.preventDefault();
    void submit();
  });
  return made;
}
