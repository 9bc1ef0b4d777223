/** A secret key in a file, locked with a passphrase: PBKDF2 makes a key of the passphrase, AES-256-GCM locks with it. */

import { t } from "../words.ts";
import { canonicalText } from "./canonical.ts";
import { didKeyOf, publicKeyOfDid } from "./did-key.ts";
import { firstDifference } from "./difference.ts";
import { at, isObject, textAt } from "./fields.ts";
import type { Json, JsonObject } from "./json.ts";
import type { Cipher, Lock } from "./key-cipher.ts";
import { base64url, publicKeyOf, utf8 } from "./libraries.ts";

/** Of PBKDF2 with SHA-256: what OWASP's Password Storage Cheat Sheet asks for at least (2023). */
export const fewestRounds = 600_000;
/** So that a file made by someone else can't keep a machine busy for minutes. */
const mostRounds = 10_000_000;
/** Letters of a passphrase; common practice for what stands between a stolen file and its key. */
export const shortestPassphrase = 12;

export interface NewKeyFile {
  /** 32 bytes of Ed25519. */
  readonly secret: Uint8Array;
  readonly passphrase: string;
  /** 16 and 12 bytes by chance, new each time. */
  readonly salt: Uint8Array;
  readonly iv: Uint8Array;
  readonly rounds?: number;
}

export type OpenedKey =
  | { readonly ok: true; readonly key: string; readonly secret: Uint8Array }
  | { readonly ok: false; readonly message: string };

/** The file as JSON. Throws a RangeError where the passphrase is too short or a length is not the one above. */
export async function lockKey(file: NewKeyFile, cipher: Cipher): Promise<JsonObject> {
  const { secret, passphrase, salt, iv, rounds = fewestRounds } = file;
  if ([...passphrase].length < shortestPassphrase)
    throw new RangeError(
      `The passphrase is too short: take ${shortestPassphrase} letters or more, such as four words.`,
    );
  if (salt.length !== 16 || iv.length !== 12 || rounds < fewestRounds || rounds > mostRounds)
    throw new RangeError("A key file takes 16 bytes of salt, 12 of iv, and 600,000 to 10,000,000 rounds.");
  const head = headOf(didKeyOf(publicKeyOf(secret)), { rounds, salt: encoded(salt), iv: encoded(iv) });
  const locked = await cipher.lock(secret, lockOf(head, passphrase, { rounds, salt, iv }));
  return { ...head, locked: encoded(locked) };
}

/** The key of a file, or in words why not. */
export async function unlockKey(json: Json, passphrase: string, cipher: Cipher): Promise<OpenedKey> {
  const file = readKeyFile(json);
  if (file === undefined) return refused(notKeyFile);
  const secret = await cipher.unlock(file.locked, lockOf(file.head, passphrase, file)).catch(() => undefined);
  if (secret === undefined)
    return refused(
      t`The passphrase does not open this key file, or the file was changed. Try the passphrase again.`,
    );
  if (secret.length !== 32 || didKeyOf(publicKeyOf(secret)) !== file.key) return refused(notKeyFile);
  return { ok: true, key: file.key, secret };
}

/** The public key of a key file, as did:key, which stands there unlocked; undefined where it is no key file. */
export const publicKeyIn = (json: Json): string | undefined => readKeyFile(json)?.key;

interface Numbers {
  readonly rounds: number;
  readonly salt: Uint8Array;
  readonly iv: Uint8Array;
}

interface KeyFile extends Numbers {
  readonly key: string;
  readonly locked: Uint8Array;
  /** All but what is locked. */
  readonly head: JsonObject;
}

const headOf = (
  key: string,
  { rounds, salt, iv }: { rounds: number; salt: string; iv: string },
): JsonObject => ({
  keyFile: 1,
  key,
  derivation: { name: "PBKDF2", hash: "SHA-256", rounds, salt },
  cipher: { name: "AES-256-GCM", iv },
});

/** The head is bound to what is locked: with another head the file does not open. */
const lockOf = (head: JsonObject, passphrase: string, { rounds, salt, iv }: Numbers): Lock => ({
  passphrase: utf8(passphrase.normalize("NFKC")),
  rounds,
  salt,
  iv,
  bound: utf8(canonicalText(head)),
});

function readKeyFile(json: Json): KeyFile | undefined {
  if (!isObject(json)) return undefined;
  const key = textAt(json, "key") ?? "";
  const rounds = at(json, "derivation", "rounds");
  const [salt, iv] = [textAt(json, "derivation", "salt") ?? "", textAt(json, "cipher", "iv") ?? ""];
  if (typeof rounds !== "number" || !Number.isInteger(rounds)) return undefined;
  if (rounds < fewestRounds || rounds > mostRounds || publicKeyOfDid(key) === undefined) return undefined;
  const head = headOf(key, { rounds, salt, iv });
  const bytes = {
    salt: decoded(salt, 16),
    iv: decoded(iv, 12),
    locked: decoded(textAt(json, "locked") ?? "", 48),
  };
  if (bytes.salt === undefined || bytes.iv === undefined || bytes.locked === undefined) return undefined;
  if (firstDifference(head, json, () => false) !== undefined) return undefined;
  return { key, rounds, head, salt: bytes.salt, iv: bytes.iv, locked: bytes.locked };
}

const encoded = (bytes: Uint8Array): string => `u${base64url.encode(bytes)}`;

function decoded(text: string, length: number): Uint8Array | undefined {
  if (!text.startsWith("u") || text.length > 100) return undefined;
  try {
    const bytes = base64url.decode(text.slice(1));
    return bytes.length === length ? bytes : undefined;
  } catch {
    return undefined;
  }
}

const notKeyFile = t`This is no key file, or not a whole one. Choose the file that was saved when the key was made; it ends in .key.json.`;

const refused = (message: string): OpenedKey => ({ ok: false, message });
