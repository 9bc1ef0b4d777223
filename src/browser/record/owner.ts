/** Makes a trainee's own key. */
import { didKeyOf } from "../../engine/competency/did-key.ts";
import { publicKeyOf } from "../../engine/competency/libraries.ts";
import type { Owner } from "./shelf.ts";

/**
 * By the platform where it can, otherwise from the browser's random bytes, which it has on plain http too. The secret is
 * kept as bytes: the record belongs to a person, and has to be able to go with them to another device.
 */
export async function newOwner(): Promise<Owner> {
  return ownerOf((await platformSecret()) ?? crypto.getRandomValues(new Uint8Array(32)));
}

/** Of 32 secret bytes. */
export const ownerOf = (secret: Uint8Array): Owner => ({ did: didKeyOf(publicKeyOf(secret)), secret });

/** RFC 8410 section 7: a private key without its public one is 48 bytes, the last 32 of them the secret. */
const pkcs8Length = 48;

async function platformSecret(): Promise<Uint8Array | undefined> {
  try {
    const { privateKey } = await crypto.subtle.generateKey("Ed25519", true, ["sign", "verify"]);
    const bytes = new Uint8Array(await crypto.subtle.exportKey("pkcs8", privateKey));
    return bytes.length === pkcs8Length ? bytes.slice(-32) : undefined;
  } catch {
    return undefined;
  }
}
