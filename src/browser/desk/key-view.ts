/** The mentor's key: made here, opened from a file, forgotten; and its public part, to hand to the coordinator. */

import type { Cipher } from "../../engine/competency/key-cipher.ts";
import { shortestPassphrase } from "../../engine/competency/key-file.ts";
import type { Mentor } from "../../engine/competency/rules.ts";
import { t } from "../../engine/words.ts";
import { askTwice } from "../page/ask-twice.ts";
import { button, element } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import type { Desk } from "./desk.ts";
import { form, lineField, tickBox } from "./fields.ts";
import { keyOfSecret, makeKey, newKeyFile, openKeyFile, signerOf, signerWith } from "./mentor-key.ts";

export interface KeyViewOptions {
  readonly desk: Desk;
  /** Undefined where the browser keeps its cipher from the page. */
  readonly cipher: Cipher | undefined;
  readonly changed: () => void;
}

/** A key file has some hundred bytes. */
const largestKeyFile = 10_000;

export class KeyView {
  readonly element = element("section", { class: "group desk-key", "aria-labelledby": "s_key" });
  readonly #options: KeyViewOptions;
  readonly #said = element("p", { role: "status" });
  readonly #body = element("div");

  constructor(options: KeyViewOptions) {
    this.#options = options;
    this.element.append(element("h2", { id: "s_key" }, t`Your key`), this.#body, this.#said);
    this.draw();
  }

  draw(): void {
    const { key } = this.#options.desk;
    this.#body.replaceChildren(...(key === undefined ? this.#without() : this.#with(key)));
  }

  #say(words: string): void {
    this.#said.textContent = words;
  }

  #with({ did, isKept }: NonNullable<Desk["key"]>): HTMLElement[] {
    const rows = this.#options.desk.options.programme.rules.mentors.filter(({ key }) => key === did);
    const kept = isKept
      ? t`It is kept in this browser, on this device. Pages of this address can sign with it; nobody can read it out. Lock the device when you go.`
      : t`It is held as long as this page is open.`;
    return [
      element("p", {}, rows.length === 0 ? unlisted : listed(rows)),
      element("p", {}, element("code", { class: "did" }, did)),
      element("p", { class: "small" }, kept),
      element(
        "div",
        { class: "actions" },
        button(t`Copy the key’s name`, () => void this.#copy(did)),
        askTwice({
          text: t`Forget the key`,
          loss: () =>
            isKept
              ? t`A key that was made here is in no other place: once it is forgotten nobody can sign with it again, nor renew its list of withdrawals. What it has signed stays good while that list is in date.`
              : undefined,
          yes: t`Forget it`,
          no: t`Keep it`,
          act: () => void this.#forget(),
        }),
      ),
    ];
  }

  async #copy(did: string): Promise<void> {
    const copied = await navigator.clipboard?.writeText(did).then(
      () => true,
      () => false,
    );
    this.#say(
      copied === true
        ? t`Copied.`
        : t`The browser does not let the page copy it. Mark it and copy it by hand.`,
    );
  }

  async #forget(): Promise<void> {
    const { desk } = this.#options;
    await desk.shelf.remove("key", "mine");
    desk.key = undefined;
    this.#done(t`Forgotten. This browser signs nothing any more.`);
  }

  #done(words: string): void {
    this.draw();
    this.#say(words);
    this.#options.changed();
  }

  #without(): HTMLElement[] {
    const { cipher } = this.#options;
    if (cipher === undefined) return [element("p", { class: "warning" }, noCrypto)];
    return [
      element("p", {}, about),
      element(
        "div",
        { class: "actions" },
        button(t`Make a key in this browser`, () => void this.#make(), { class: "is-main" }),
      ),
      element("div", { class: "key-forms" }, this.#openForm(cipher), this.#fileForm(cipher)),
    ];
  }

  async #make(): Promise<void> {
    const { desk } = this.#options;
    const made = await makeKey();
    if (made === undefined || !desk.shelf.isKept)
      return this.#say(made === undefined ? noEd25519 : noStorage);
    await desk.shelf.put("key", "mine", made);
    await navigator.storage?.persist?.().catch(() => false);
    desk.key = signerOf(made);
    this.#done(t`Made. Hand its name to the coordinator, who lists it in programme.yaml.`);
  }

  #openForm(cipher: Cipher): HTMLElement {
    const file = element("input", { type: "file", id: "key-file", accept: ".json,application/json" });
    const passphrase = lineField("key-passphrase", t`Its passphrase`, {
      type: "password",
      autocomplete: t`off`,
    });
    const keep = tickBox("key-keep", t`keep it in this browser, so that it signs without the passphrase`);
    const open = async () => {
      const [chosen] = file.files ?? [];
      if (chosen === undefined) return this.#say(t`Choose the key file first; it ends in .key.json.`);
      const opened = await openKeyFile(
        await chosen.slice(0, largestKeyFile).text(),
        passphrase.input.value,
        cipher,
      );
      if (!opened.ok) return this.#say(opened.message);
      await this.#take(opened.secret, keep.input.checked);
    };
    return element(
      "div",
      { class: "key-form" },
      element("h3", {}, t`A key from a file`),
      form(
        () => void open(),
        element("label", { for: "key-file" }, t`Key file`),
        file,
        passphrase.element,
        keep.element,
        element("button", { type: "submit" }, t`Use this key`),
      ),
    );
  }

  async #take(secret: Uint8Array, isToKeep: boolean): Promise<void> {
    const { desk } = this.#options;
    const kept = isToKeep && desk.shelf.isKept ? await keyOfSecret(secret) : undefined;
    if (kept !== undefined) await desk.shelf.put("key", "mine", kept);
    desk.key = kept === undefined ? signerWith(secret) : signerOf(kept);
    const words = isToKeep && kept === undefined ? t`The browser can’t keep it; it` : t`It`;
    this.#done(
      kept === undefined
        ? t`${words} signs until you leave this page.`
        : t`It is kept in this browser from now on.`,
    );
  }

  #fileForm(cipher: Cipher): HTMLElement {
    const first = lineField("key-new", t`Passphrase, ${shortestPassphrase} letters or more`, {
      type: "password",
      autocomplete: "new-password",
    });
    const second = lineField("key-again", t`The same once more`, {
      type: "password",
      autocomplete: "new-password",
    });
    const make = async () => {
      const length = [...first.input.value].length;
      if (length < shortestPassphrase)
        return this.#say(
          t`The passphrase has ${length} letters; take ${shortestPassphrase} or more, such as four words.`,
        );
      if (first.input.value !== second.input.value)
        return this.#say(t`The two passphrases are not the same. Write them again.`);
      const { secret, text } = await newKeyFile(first.input.value, cipher);
      saveFile("mentor.key.json", text);
      this.#options.desk.key = signerWith(secret);
      this.#done(
        t`Made, and saved as mentor.key.json where this browser puts downloads. Keep that file: without it and its passphrase nobody can sign with the key again.`,
      );
    };
    return element(
      "div",
      { class: "key-form" },
      element("h3", {}, t`A new key in a file`),
      form(
        () => void make(),
        first.element,
        second.element,
        element("button", { type: "submit" }, t`Make a key file`),
      ),
    );
  }
}

const listed = (rows: readonly Mentor[]): string =>
  t`The programme lists it as that of ${rows[0]!.name}, who may sign ${rows
    .map(
      ({ maySign, highestLevel, from, to }) =>
        t`${maySign === "all" ? t`every module` : maySign.join(", ") || t`nothing`} up to “${highestLevel}”, from ${from}${to === undefined ? "" : t` to ${to}`}`,
    )
    .join("; and ")}.`;

const unlisted = t`The programme does not list this key yet, so that nothing signed with it counts. Hand its name to the coordinator, who puts it into programme.yaml under mentors and builds the site anew:`;
const about = t`With a key you sign; its name goes into the programme’s list of mentors. One that is made in this browser can’t be taken out of it, and needs no passphrase. One in a file goes with you to other devices, locked with a passphrase; benchwright key new makes the same kind of file.`;
const noCrypto = t`Nothing can be signed at this address: over plain http browsers keep their cryptography from pages. You can look at files here and fill in the evening sheet. To sign, open the site by https, on localhost, or from a disk.`;
const noEd25519 = t`This browser has no Ed25519 of its own, so that it can’t keep a key safe. Make one in a file, below, or use a newer browser.`;
const noStorage = t`This browser lets the page keep nothing, and a key that is gone tomorrow is of no use. Make one in a file, below.`;
