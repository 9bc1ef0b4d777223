/** Bundled into a page by the test beside it: the engine's own code at the vectors that are handed in, as plain data. */
import { gunzip } from "../../../src/browser/record/gunzip.ts";
import { signStatement } from "../../../src/engine/competency/credential.ts";
import type { JsonObject } from "../../../src/engine/competency/json.ts";
import { webCipher } from "../../../src/engine/competency/key-cipher.ts";
import { lockKey, unlockKey } from "../../../src/engine/competency/key-file.ts";
import {
  base58,
  canonicalText,
  portable,
  publicKeyOf,
  signWith,
  utf8,
} from "../../../src/engine/competency/libraries.ts";
import { bytesToSign, checkProof } from "../../../src/engine/competency/proof.ts";
import type { Statement } from "../../../src/engine/competency/sign-off.ts";
import { placesIn, unpacked } from "../../../src/engine/competency/status-list.ts";
import { readJson } from "../../../src/engine/competency/strict-json.ts";

const hexOf = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

const inPage = {
  hasSubtle: () => globalThis.crypto.subtle !== undefined,

  canonical(text: string): string {
    const read = readJson(text);
    return read.ok ? hexOf(utf8(canonicalText(read.value))) : read.problem.code;
  },

  signature({ priv, msg, sig }: { priv: string; msg: string; sig: string }) {
    const key = publicKeyOf(bytesOf(priv));
    return {
      pub: hexOf(key),
      sig: hexOf(signWith(bytesOf(priv), bytesOf(msg))),
      verifies: portable.verify(bytesOf(sig), bytesOf(msg), key),
      verifiesChanged: portable.verify(bytesOf(sig), bytesOf(`${msg}00`), key),
    };
  },

  /** Document and proof as JSON. */
  eddsaJcs(unsigned: string, config: string, privateKeyMultibase: string) {
    const bytes = bytesToSign(JSON.parse(unsigned), JSON.parse(config), portable);
    const secret = base58.decode(privateKeyMultibase.slice(1)).slice(2);
    return { hash: hexOf(bytes), proofValue: `z${base58.encode(signWith(secret, bytes))}` };
  },

  /** Of a document as JSON. */
  codeOf: (document: string): string => checkProof(JSON.parse(document), portable)?.code ?? "sound",

  signed: (statement: Statement, secret: string): Promise<JsonObject> =>
    signStatement(statement, {
      identifier: "https://club.example/bench",
      programme: "The Saturday bench",
      primitives: portable,
      created: "2026-11-27T19:31:00Z",
      sign: async (message) => signWith(bytesOf(secret), message),
    }),

  places: async (encodedList: string) => placesIn((await unpacked(encodedList, gunzip))!),

  async keyFile(secret: string, passphrase: string) {
    const cipher = webCipher(globalThis.crypto.subtle);
    const chance = { salt: new Uint8Array(16).fill(5), iv: new Uint8Array(12).fill(6) };
    const file = await lockKey({ secret: bytesOf(secret), passphrase, ...chance }, cipher);
    return { file, opens: (await unlockKey(file, passphrase, cipher)).ok };
  },
};

export type InPage = typeof inPage;
Object.assign(globalThis, { inPage });
