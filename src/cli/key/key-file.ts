/** Key files on disk: read, and opened with their passphrase. */

import type { Json } from "../../engine/competency/json.ts";
import { webCipher } from "../../engine/competency/key-cipher.ts";
import { publicKeyIn, unlockKey } from "../../engine/competency/key-file.ts";
import { signWith } from "../../engine/competency/libraries.ts";
import type { Sign } from "../../engine/competency/primitives.ts";
import { BadInput } from "../command.ts";
import { readJsonFile } from "../record/read-text.ts";
import { passphrase } from "./passphrase.ts";

export const cipher = webCipher(globalThis.crypto.subtle);

function jsonOf(file: string): Json {
  const json = readJsonFile(file);
  if (json.ok) return json.value;
  throw new BadInput(`${file}: ${json.problem.message}`);
}

/** The did:key of a key file, which stands there unlocked. Throws a BadInput where it is no key file. */
export function publicKeyOfFile(file: string): string {
  const key = publicKeyIn(jsonOf(file));
  if (key === undefined) throw new BadInput(`${file}: this is no key file. key new makes one.`);
  return key;
}

/** Signs with the key of a file, once its passphrase is given. Throws a BadInput where it does not open. */
export async function openKey(file: string): Promise<{ readonly key: string; readonly sign: Sign }> {
  const json = jsonOf(file);
  if (publicKeyIn(json) === undefined) throw new BadInput(`${file}: this is no key file. key new makes one.`);
  const opened = await unlockKey(json, await passphrase(file), cipher);
  if (!opened.ok) throw new BadInput(`${file}: ${opened.message}`);
  return { key: opened.key, sign: async (message) => signWith(opened.secret, message) };
}
