/** Takes the owner's key along in a locked file, and takes it up again. */

import { type Cipher, webCipher } from "../../engine/competency/key-cipher.ts";
import { lockKey, unlockKey } from "../../engine/competency/key-file.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import { t } from "../../engine/words.ts";
import { saveFile } from "../page/save-file.ts";
import { slug } from "./file-name.ts";
import type { OwnRecord } from "./own-record.ts";
import { ownerOf } from "./owner.ts";
import { NotEmpty } from "./shelf.ts";

/** Undefined where the browser keeps its cipher from the page, as on plain http. */
export const cipherHere = (): Cipher | undefined =>
  globalThis.crypto?.subtle === undefined ? undefined : webCipher(crypto.subtle);

/** Saves the key and gives the name of the file. Rejects where it can't be locked. */
export async function saveKey(own: OwnRecord, cipher: Cipher, passphrase: string): Promise<string> {
  const { owner, record } = await own.held();
  const [salt, iv] = [16, 12].map((length) => crypto.getRandomValues(new Uint8Array(length)));
  const file = await lockKey({ secret: owner.secret, passphrase, salt: salt!, iv: iv! }, cipher);
  const name = `${slug(record.name)}.key.json`;
  saveFile(name, `${JSON.stringify(file, null, 1)}\n`);
  return name;
}

/** Takes up the key of a file; gives in words why not. */
export async function takeKey(
  own: OwnRecord,
  cipher: Cipher,
  text: string,
  passphrase: string,
): Promise<string | undefined> {
  const json = readJson(text);
  if (!json.ok) return json.problem.message;
  const opened = await unlockKey(json.value, passphrase, cipher);
  if (!opened.ok) return opened.message;
  if (opened.key === own.owner) return t`This is the key that is here already. Nothing was changed.`;
  try {
    await own.replaceOwner(ownerOf(opened.secret));
    return undefined;
  } catch (error) {
    return error instanceof NotEmpty ? notEmpty : t`The key could not be kept here. Nothing was changed.`;
  }
}

const notEmpty = t`There are entries on this device already, under another key. Save them as a file and erase the record here first; then take up this key. A mentor can sign that it goes on for the other one.`;
