/** Published vectors: tests/reference/credentials, of the W3C, the IETF and 1EdTech. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Json, JsonObject } from "../../../src/engine/competency/json.ts";

const folder = fileURLToPath(new URL("../../reference/credentials/", import.meta.url));

export const referenceText = (path: string): string => readFileSync(folder + path, "utf8");
export const referenceJson = (path: string): JsonObject => JSON.parse(referenceText(path)) as JsonObject;

/** RFC 8032 section 7.1. */
export interface SignatureVector {
  readonly name: string;
  readonly priv: string;
  readonly pub: string;
  readonly msg: string;
  readonly sig: string;
}
export const signatureVectors = JSON.parse(
  referenceText("rfc8032/rfc8032-7.1.json"),
) as readonly SignatureVector[];

/** RFC 8785: input and the expected bytes, in hexadecimal. */
export interface CanonicalVector {
  readonly name: string;
  readonly input: string;
  readonly bytes: string;
}
export const canonicalVectors: readonly CanonicalVector[] = [
  "arrays",
  "french",
  "structures",
  "unicode",
  "values",
  "weird",
].map((name) => ({
  name,
  input: referenceText(`rfc8785-jcs/testdata/input/${name}.json`),
  bytes: referenceText(`rfc8785-jcs/testdata/outhex/${name}.txt`).replaceAll(/\s/g, ""),
}));

/** Data Integrity EdDSA Cryptosuites 1.0, test vectors of eddsa-jcs-2022. */
export const eddsaJcs = {
  unsigned: referenceJson("eddsa-jcs-2022/unsigned.json"),
  config: referenceJson("eddsa-jcs-2022/proofConfigJCS.json"),
  signed: referenceJson("eddsa-jcs-2022/signedJCS.json"),
  keys: referenceJson("eddsa-jcs-2022/keyPair.json") as {
    readonly publicKeyMultibase: string;
    readonly privateKeyMultibase: string;
  },
  /** A text of the vectors by its file name, without the end of line. */
  text: (name: string): string => referenceText(`eddsa-jcs-2022/${name}.txt`).trim(),
};

export const sample = referenceJson("signoff.vc.json");

export const hexOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");
export const bytesOf = (hex: string): Uint8Array => new Uint8Array(Buffer.from(hex, "hex"));

/** The value, with another put at the end of a path. */
export function changed(value: Json, path: readonly (string | number)[], to: Json | undefined): JsonObject {
  const copy = structuredClone(value) as Record<string | number, unknown>;
  const parent = path
    .slice(0, -1)
    .reduce((found, step) => found[step] as Record<string | number, unknown>, copy);
  if (to === undefined) delete parent[path.at(-1)!];
  else parent[path.at(-1)!] = to;
  return copy as unknown as JsonObject;
}
