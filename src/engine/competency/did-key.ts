/** Ed25519 keys by name: `did:key:z6Mk…`, which is multibase base58btc of the multicodec 0xed01 and the public key. */
import { base58 } from "./libraries.ts";

const prefix = "did:key:z";
const multicodec = [0xed, 0x01];
/** 34 bytes beginning with 0xed are 47 letters. */
const letters = 47;

/** Of a 32-byte public key. */
export const didKeyOf = (publicKey: Uint8Array): string =>
  prefix + base58.encode(Uint8Array.of(...multicodec, ...publicKey));

/** The 32-byte public key; undefined of anything that `didKeyOf` does not give. Whether it is a point, verifying tells. */
export function publicKeyOfDid(did: string): Uint8Array | undefined {
  if (!did.startsWith(prefix) || did.length !== prefix.length + letters) return undefined;
  const bytes = decoded(did.slice(prefix.length));
  return bytes?.length === 34 && multicodec.every((byte, at) => bytes[at] === byte)
    ? bytes.slice(2)
    : undefined;
}

function decoded(text: string): Uint8Array | undefined {
  try {
    return base58.decode(text);
  } catch {
    return undefined;
  }
}

/** The key within its own document, as a proof names it: `did:key:z…#z…`. */
export const verificationMethodOf = (did: string): string => `${did}#${did.slice("did:key:".length)}`;
