import { toText } from "../page/base64url.ts";

/** The digest by which an edition's list names a file: the first 128 bits of its SHA-256 in base64url. */
export async function digestOf(content: ArrayBuffer): Promise<string> {
  return toText(new Uint8Array(await crypto.subtle.digest("SHA-256", content)).subarray(0, 16));
}
