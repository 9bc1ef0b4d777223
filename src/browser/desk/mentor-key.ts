/** A mentor's key: made by the browser and never handed out by it, or opened from a locked file. */
import { didKeyOf } from "../../engine/competency/did-key.ts";
import type { Cipher } from "../../engine/competency/key-cipher.ts";
import { lockKey, unlockKey } from "../../engine/competency/key-file.ts";
import { publicKeyOf, signWith } from "../../engine/competency/libraries.ts";
import type { Sign } from "../../engine/competency/primitives.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import type { KeptKey } from "./desk-shelf.ts";

/** What signs just now. */
export interface MentorKey {
  readonly did: string;
  readonly sign: Sign;
  /** Kept by the browser; otherwise it is gone when the page is left. */
  readonly isKept: boolean;
}

export const signerOf = ({ did, key }: KeptKey, isKept = true): MentorKey => ({
  ...{ did, isKept },
  sign: async (message) => new Uint8Array(await crypto.subtle.sign("Ed25519", key, new Uint8Array(message))),
});

export const signerWith = (secret: Uint8Array): MentorKey => ({
  did: didKeyOf(publicKeyOf(secret)),
  sign: async (message) => signWith(secret, message),
  isKept: false,
});

/** One that can't be taken out of the browser. Undefined where the browser has no Ed25519 of its own here. */
export async function makeKey(): Promise<KeptKey | undefined> {
  try {
    const { publicKey, privateKey } = (await crypto.subtle.generateKey("Ed25519", false, [
      "sign",
      "verify",
    ])) as CryptoKeyPair;
    return {
      did: didKeyOf(new Uint8Array(await crypto.subtle.exportKey("raw", publicKey))),
      key: privateKey,
    };
  } catch {
    return undefined;
  }
}

/** RFC 8410 section 7: what stands before the 32 secret bytes in PKCS #8. */
const pkcs8Head = [0x30, 0x2e, 2, 1, 0, 0x30, 5, 6, 3, 0x2b, 0x65, 0x70, 4, 0x22, 4, 0x20];

/** The same, of a secret that was opened. */
export async function keyOfSecret(secret: Uint8Array): Promise<KeptKey | undefined> {
  try {
    const bytes = Uint8Array.of(...pkcs8Head, ...secret);
    const key = await crypto.subtle.importKey("pkcs8", bytes, "Ed25519", false, ["sign"]);
    return { did: didKeyOf(publicKeyOf(secret)), key };
  } catch {
    return undefined;
  }
}

/** A new key as the text of a locked file. Rejects where the passphrase is too short. */
export async function newKeyFile(
  passphrase: string,
  cipher: Cipher,
): Promise<{ secret: Uint8Array; text: string }> {
  const [secret, salt, iv] = [32, 16, 12].map((length) => crypto.getRandomValues(new Uint8Array(length)));
  const file = await lockKey({ secret: secret!, passphrase, salt: salt!, iv: iv! }, cipher);
  return { secret: secret!, text: `${JSON.stringify(file, null, 1)}\n` };
}

/** The secret of a key file, or in words why not. */
export async function openKeyFile(text: string, passphrase: string, cipher: Cipher) {
  const json = readJson(text);
  return json.ok
    ? unlockKey(json.value, passphrase, cipher)
    : ({ ok: false, message: json.problem.message } as const);
}
