import { createDecipheriv, pbkdf2Sync } from "node:crypto";
import { describe, expect, test } from "vitest";
import type { Json, JsonObject } from "../../../src/engine/competency/json.ts";
import { webCipher } from "../../../src/engine/competency/key-cipher.ts";
import { fewestRounds, lockKey, publicKeyIn, unlockKey } from "../../../src/engine/competency/key-file.ts";
import { base64url, canonicalText } from "../../../src/engine/competency/libraries.ts";
import { changed } from "./reference.ts";
import { mentor, stranger } from "./statements.ts";

const cipher = webCipher(globalThis.crypto.subtle);
const passphrase = "governor brake lubber ﬁne";
const chance = { salt: new Uint8Array(16).fill(5), iv: new Uint8Array(12).fill(6) };
const once = lockKey({ secret: mentor.secret, passphrase, ...chance }, cipher);
const locked = (): Promise<JsonObject> => once;

test("a key that was locked is unlocked by its passphrase, however its letters are put together", async () => {
  const file = JSON.parse(JSON.stringify(await locked())) as Json;
  expect(publicKeyIn(file)).toBe(mentor.key);
  expect(await unlockKey(file, passphrase, cipher)).toEqual({
    ok: true,
    key: mentor.key,
    secret: mentor.secret,
  });
  // U+FB01 is "fi" by Unicode's compatibility forms (NFKC).
  expect((await unlockKey(file, "governor brake lubber fine", cipher)).ok).toBe(true);
  expect((await unlockKey(file, "governor brake lubber Fine", cipher)).ok).toBe(false);
});

test("it is unlocked by PBKDF2 and AES-256-GCM of another library, from the file alone", async () => {
  const { locked: sealed, ...head } = (await locked()) as { locked: string } & JsonObject;
  const { rounds, salt } = head.derivation as { rounds: number; salt: string };
  const { iv } = head.cipher as { iv: string };
  const bytesOf = (text: string): Uint8Array => base64url.decode(text.slice(1));
  expect(rounds).toBe(600_000);
  const key = pbkdf2Sync(passphrase.normalize("NFKC"), bytesOf(salt), rounds, 32, "sha256");
  const decipher = createDecipheriv("aes-256-gcm", key, bytesOf(iv));
  decipher.setAAD(Buffer.from(canonicalText(head)));
  decipher.setAuthTag(bytesOf(sealed).slice(-16));
  const secret = Buffer.concat([decipher.update(bytesOf(sealed).slice(0, -16)), decipher.final()]);
  expect(new Uint8Array(secret)).toEqual(mentor.secret);
});

test("the file does not say the secret", async () => {
  const text = JSON.stringify(await locked());
  expect(text).not.toContain(base64url.encode(mentor.secret));
  expect(text).not.toContain(passphrase);
});

describe("refused", () => {
  test.each([
    ["a key of someone else put in", ["key"], stranger.key, "passphrase"],
    ["other rounds", ["derivation", "rounds"], fewestRounds + 1, "passphrase"],
    ["fewer rounds than are safe", ["derivation", "rounds"], 1000, "no key file"],
    ["rounds without end", ["derivation", "rounds"], 1e12, "no key file"],
    ["another derivation", ["derivation", "name"], "scrypt", "no key file"],
    ["another cipher", ["cipher", "name"], "AES-CBC", "no key file"],
    ["a salt cut off", ["derivation", "salt"], "uAAAA", "no key file"],
    ["nothing locked", ["locked"], undefined, "no key file"],
    ["a later form", ["keyFile"], 2, "no key file"],
  ] as const)("%s", async (_, path, to, words) => {
    const result = await unlockKey(changed(await locked(), path, to), passphrase, cipher);
    expect(result.ok ? "" : result.message).toContain(words);
  });

  test("one bit turned in what is locked", async () => {
    const file = await locked();
    const bytes = base64url.decode((file.locked as string).slice(1));
    bytes[0]! ^= 1;
    const result = await unlockKey({ ...file, locked: `u${base64url.encode(bytes)}` }, passphrase, cipher);
    expect(result.ok).toBe(false);
  });

  test.each([[null], [[]], ["x"], [{}]])("%j", async (json) => {
    expect((await unlockKey(json, passphrase, cipher)).ok).toBe(false);
  });

  test("a short passphrase, a short salt, few rounds, before anything is locked", async () => {
    const file = { secret: mentor.secret, passphrase, ...chance };
    await expect(lockKey({ ...file, passphrase: "elevenchars" }, cipher)).rejects.toThrow("too short");
    await expect(lockKey({ ...file, salt: new Uint8Array(8) }, cipher)).rejects.toThrow(RangeError);
    await expect(lockKey({ ...file, rounds: 599_999 }, cipher)).rejects.toThrow(RangeError);
  });
});
