/** A mentor's withdrawals as a signed list of bits: Bitstring Status List 1.0 (W3C Recommendation, 15 May 2025). */
import { t } from "../words.ts";
import { statusListContexts } from "./contexts.ts";
import { firstDifference } from "./difference.ts";
import { isObject, textAt } from "./fields.ts";
import { readInstant } from "./instant.ts";
import type { Json, JsonObject } from "./json.ts";
import { base64url } from "./libraries.ts";
import type { Unsigned } from "./make-credential.ts";
import type { Primitives } from "./primitives.ts";
import type { RecordProblem } from "./problems.ts";
import { checkProof, type Signing, signDocument } from "./proof.ts";
import { quoted } from "./quoted.ts";
import { isBitSet, listLength } from "./status-bits.ts";

export { bitsOf, placesIn } from "./status-bits.ts";

/** Compresses by gzip (RFC 1952). */
export type Gzip = (bytes: Uint8Array) => Promise<Uint8Array>;
/** Rejects what is no gzip, and whatever gives more than `most` bytes: a small file must not fill the memory. */
export type Gunzip = (bytes: Uint8Array, most: number) => Promise<Uint8Array>;

export interface NewStatusList extends Signing {
  /** did:key of the mentor, whose `sign` it is. */
  readonly issuer: string;
  /** `statusListId` of programme and mentor. */
  readonly id: string;
  /** From `bitsOf`. */
  readonly bits: Uint8Array;
  /** Instants in UTC. */
  readonly validFrom: string;
  readonly validUntil: string;
  readonly gzip: Gzip;
}

export interface StatusList {
  readonly issuer: string;
  readonly id: string;
  readonly validFrom: string;
  readonly validUntil: string;
  readonly bits: Uint8Array;
  /** Whether the credential at this place is withdrawn; true too of a place that the list does not have. */
  isSet(place: number): boolean;
}

export type ReadStatusList =
  | { readonly ok: true; readonly list: StatusList }
  | { readonly ok: false; readonly problem: RecordProblem };

/** The signed list. O(bits). */
export async function makeStatusList(list: NewStatusList): Promise<JsonObject> {
  const { gzip, bits, issuer, ...rest } = list;
  const encodedList = `u${base64url.encode(await gzip(bits))}`;
  return signDocument(documentOf({ ...rest, issuer, encodedList }), issuer, rest);
}

interface Listed {
  readonly issuer: string;
  readonly id: string;
  readonly validFrom: string;
  readonly validUntil: string;
  readonly encodedList: string;
}

const documentOf = ({ issuer, id, validFrom, validUntil, encodedList }: Listed): Unsigned => ({
  "@context": statusListContexts,
  id,
  type: ["VerifiableCredential", "BitstringStatusListCredential"],
  issuer,
  validFrom,
  validUntil,
  credentialSubject: {
    id: `${id}#list`,
    type: "BitstringStatusList",
    statusPurpose: "revocation",
    encodedList,
  },
});

/**
 * The list, where its shape, signature and length are right; whether it is in date and the mentor's, the caller looks
 * at. Every problem has the code `status-list`. O(bits).
 */
export async function readStatusList(
  json: Json,
  { primitives, gunzip }: { readonly primitives: Primitives; readonly gunzip: Gunzip },
): Promise<ReadStatusList> {
  if (!isObject(json)) return refused(t`expected a list of withdrawals; found ${quoted(json)}`);
  const listed = listedIn(json);
  const difference = firstDifference(documentOf(listed), json, () => false);
  if (difference !== undefined)
    return refused(
      t`expected ${quoted(difference.expected)}; found ${quoted(difference.found)}`,
      difference.path,
    );
  const from = readInstant(listed.validFrom);
  const until = readInstant(listed.validUntil);
  if (from === undefined || until === undefined || until <= from)
    return refused(t`expected two times with their zone, the second after the first`, "validUntil");
  const fault = checkProof(json, primitives, statusListContexts);
  if (fault !== undefined) return refused(fault.message, fault.at);
  const bits = await unpacked(listed.encodedList, gunzip);
  if (bits?.length !== listLength / 8)
    return refused(
      t`expected u and ${listLength} bits, packed by gzip, in base64url`,
      "credentialSubject.encodedList",
    );
  return { ok: true, list: { ...listed, bits, isSet: (place) => isBitSet(bits, place) } };
}

const listedIn = (json: JsonObject): Listed => ({
  issuer: textAt(json, "issuer") ?? "",
  id: textAt(json, "id") ?? "",
  validFrom: textAt(json, "validFrom") ?? "",
  validUntil: textAt(json, "validUntil") ?? "",
  encodedList: textAt(json, "credentialSubject", "encodedList") ?? "",
});

/** The bytes of an encoded list; undefined where there are none to be had. */
export async function unpacked(encodedList: string, gunzip: Gunzip): Promise<Uint8Array | undefined> {
  if (!encodedList.startsWith("u")) return undefined;
  try {
    return await gunzip(base64url.decode(encodedList.slice(1)), listLength / 8);
  } catch {
    return undefined;
  }
}

const refused = (words: string, at?: string): ReadStatusList => ({
  ok: false,
  problem: {
    code: "status-list",
    message: t`The list of withdrawals can't be used: ${words}. Take it again from the programme's site.`,
    at,
  },
});
