/** Reads the one proof of a signed document: everything about it but whether the signature fits. */
import { t } from "../words.ts";
import { publicKeyOfDid, verificationMethodOf } from "./did-key.ts";
import { pathOf } from "./difference.ts";
import { at, isList, isObject, textAt } from "./fields.ts";
import { readInstant } from "./instant.ts";
import type { Json, JsonObject } from "./json.ts";
import { base58 } from "./libraries.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import { quoted } from "./quoted.ts";

export type ReadProof =
  | {
      readonly ok: true;
      readonly proof: JsonObject;
      readonly signature: Uint8Array;
      readonly publicKey: Uint8Array;
    }
  | { readonly ok: false; readonly problem: RecordProblem };

/** Of a document that is to have the given contexts and no others. O(size). */
export function readProof(document: JsonObject, contexts: readonly string[]): ReadProof {
  const issuer = issuerOf(document);
  const parts: Parts = {
    ...{ document, contexts, issuer },
    publicKey: publicKeyOfDid(issuer),
    signature: signatureOf(document),
  };
  const broken = demands.find(({ holds }) => !holds(parts));
  if (broken !== undefined) return { ok: false, problem: problemOf(broken, parts) };
  return {
    ok: true,
    proof: proofOf(document),
    signature: parts.signature!,
    publicKey: parts.publicKey!,
  };
}

/** A document with what it names in base58, which takes longer to read than all else and is read once. */
interface Parts {
  readonly document: JsonObject;
  readonly contexts: readonly string[];
  readonly issuer: string;
  readonly publicKey: Uint8Array | undefined;
  readonly signature: Uint8Array | undefined;
}

/** The issuer's address, given alone or as the id of a profile; empty where there is none. */
export const issuerOf = (document: JsonObject): string =>
  textAt(document, "issuer") ?? textAt(document, "issuer", "id") ?? "";

interface Demand {
  readonly code: RecordCode;
  /** The path of what it looks at. */
  readonly path: readonly (string | number)[];
  holds(parts: Parts): boolean;
  expected(parts: Parts): string;
}

const fieldsOfProof = new Set([
  "type",
  "cryptosuite",
  "created",
  "verificationMethod",
  "proofPurpose",
  "@context",
  "proofValue",
]);

/** What must hold, in this order: the first that does not is told. */
const demands: readonly Demand[] = [
  {
    code: "context",
    path: ["@context"],
    holds: ({ document, contexts }) => isSameList(at(document, "@context"), contexts),
    expected: ({ contexts }) => t`exactly ${quoted(contexts)}: any other could change what the words mean`,
  },
  {
    code: "schema",
    path: ["proof"],
    holds: ({ document }) => isListOfOne(at(document, "proof")),
    expected: () => t`a list of one proof`,
  },
  {
    code: "suite",
    path: ["proof", 0, "previousProof"],
    holds: ({ document }) => at(document, "proof", 0, "previousProof") === undefined,
    expected: () => t`a proof that stands by itself`,
  },
  fixed("type", "DataIntegrityProof"),
  fixed("cryptosuite", "eddsa-jcs-2022"),
  fixed("proofPurpose", "assertionMethod"),
  {
    code: "schema",
    path: ["proof", 0],
    holds: ({ document }) => Object.keys(proofOf(document)).every((name) => fieldsOfProof.has(name)),
    expected: () => t`no fields but ${[...fieldsOfProof].join(", ")}`,
  },
  {
    code: "context",
    path: ["proof", 0, "@context"],
    holds: ({ document, contexts }) => isSameList(at(document, "proof", 0, "@context"), contexts),
    expected: ({ contexts }) => t`the contexts of the document, ${quoted(contexts)}`,
  },
  {
    code: "schema",
    path: ["proof", 0, "created"],
    holds: ({ document }) => readInstant(textAt(document, "proof", 0, "created") ?? "") !== undefined,
    expected: () => t`a time with its zone, such as 2026-11-27T19:30:00Z`,
  },
  {
    code: "key-mismatch",
    path: ["issuer"],
    holds: ({ publicKey }) => publicKey !== undefined,
    expected: () => t`an Ed25519 key as did:key:z6Mk…`,
  },
  {
    code: "key-mismatch",
    path: ["proof", 0, "verificationMethod"],
    holds: ({ document, issuer }) =>
      textAt(document, "proof", 0, "verificationMethod") === verificationMethodOf(issuer),
    expected: ({ issuer }) => t`the key of the issuer, ${verificationMethodOf(issuer)}`,
  },
  {
    code: "signature",
    path: ["proof", 0, "proofValue"],
    holds: ({ signature }) => signature !== undefined,
    expected: () => t`z and 64 bytes in base58`,
  },
];

function fixed(name: string, value: string): Demand {
  return {
    code: "suite",
    path: ["proof", 0, name],
    holds: ({ document }) => at(document, "proof", 0, name) === value,
    expected: () => t`"${value}", the only one that is read here`,
  };
}

const proofOf = (document: JsonObject): JsonObject => at(document, "proof", 0) as JsonObject;

const isListOfOne = (value: Json | undefined): boolean =>
  isList(value) && value.length === 1 && isObject(value[0]);

const isSameList = (value: Json | undefined, list: readonly string[]): boolean =>
  isList(value) && value.length === list.length && list.every((entry, place) => value[place] === entry);

/** 64 bytes are at most 88 letters of base58. */
const longestSignature = 88;

function signatureOf(document: JsonObject): Uint8Array | undefined {
  const text = textAt(document, "proof", 0, "proofValue") ?? "";
  if (!text.startsWith("z") || text.length > 1 + longestSignature) return undefined;
  try {
    const bytes = base58.decode(text.slice(1));
    return bytes.length === 64 ? bytes : undefined;
  } catch {
    return undefined;
  }
}

function problemOf({ code, path, expected }: Demand, parts: Parts): RecordProblem {
  return {
    code,
    message: t`Expected ${expected(parts)}; found ${quoted(at(parts.document, ...path))}. Ask whoever signed it for the file as they signed it.`,
    at: pathOf(path),
  };
}
