/** Locks bytes with a passphrase, by Web Crypto: in Node 20, and in browsers on https, on localhost and from disk. */

/** What lock and unlock must have alike. */
export interface Lock {
  readonly passphrase: Uint8Array;
  readonly rounds: number;
  readonly salt: Uint8Array;
  readonly iv: Uint8Array;
  /** Not locked, but nothing opens where it is another. */
  readonly bound: Uint8Array;
}

export interface Cipher {
  /** 16 bytes longer than what is locked. */
  lock(bytes: Uint8Array, lock: Lock): Promise<Uint8Array>;
  /** Rejects where the passphrase is another or anything was changed. */
  unlock(locked: Uint8Array, lock: Lock): Promise<Uint8Array>;
}

/** What Web Crypto takes: bytes in memory that nobody shares. */
type Bytes = Uint8Array<ArrayBuffer>;

/** What is used here of `crypto.subtle`. */
export interface Subtle<Key> {
  importKey(format: "raw", bytes: Bytes, name: string, extractable: false, uses: ["deriveKey"]): Promise<Key>;
  deriveKey(by: Pbkdf2, from: Key, to: Aes, extractable: false, uses: ["encrypt", "decrypt"]): Promise<Key>;
  encrypt(by: Gcm, key: Key, bytes: Bytes): Promise<ArrayBuffer>;
  decrypt(by: Gcm, key: Key, bytes: Bytes): Promise<ArrayBuffer>;
}

interface Pbkdf2 {
  readonly name: "PBKDF2";
  readonly hash: "SHA-256";
  readonly iterations: number;
  readonly salt: Bytes;
}

interface Aes {
  readonly name: "AES-GCM";
  readonly length: 256;
}

interface Gcm {
  readonly name: "AES-GCM";
  readonly iv: Bytes;
  readonly additionalData: Bytes;
}

/** PBKDF2 with SHA-256 (RFC 8018), then AES-256-GCM (NIST SP 800-38D) with a tag of 128 bits. */
export function webCipher<Key>(subtle: Subtle<Key>): Cipher {
  const keyOf = async ({ passphrase, salt, rounds }: Lock): Promise<Key> => {
    const from = await subtle.importKey("raw", own(passphrase), "PBKDF2", false, ["deriveKey"]);
    const by: Pbkdf2 = { name: "PBKDF2", hash: "SHA-256", iterations: rounds, salt: own(salt) };
    return subtle.deriveKey(by, from, { name: "AES-GCM", length: 256 }, false, ["encrypt", "decrypt"]);
  };
  const gcm = ({ iv, bound }: Lock): Gcm => ({ name: "AES-GCM", iv: own(iv), additionalData: own(bound) });
  return {
    lock: async (bytes, lock) =>
      new Uint8Array(await subtle.encrypt(gcm(lock), await keyOf(lock), own(bytes))),
    unlock: async (locked, lock) =>
      new Uint8Array(await subtle.decrypt(gcm(lock), await keyOf(lock), own(locked))),
  };
}

const own = (bytes: Uint8Array): Bytes => new Uint8Array(bytes);
