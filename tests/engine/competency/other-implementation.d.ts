/** Of the other implementation of eddsa-jcs-2022, which has no types of its own: what the cross-check uses. */

declare module "@digitalbazaar/eddsa-jcs-2022-cryptosuite" {
  interface Cryptosuite {
    readonly name: string;
    readonly requiredAlgorithm: string;
    createVerifyData(of: { cryptosuite: Cryptosuite; document: object; proof: object }): Promise<Uint8Array>;
    createVerifier(of: { verificationMethod: object }): Promise<{
      verify(signed: { data: Uint8Array; signature: Uint8Array }): Promise<boolean>;
    }>;
  }
  export function createSignCryptosuite(): Cryptosuite;
  export function createVerifyCryptosuite(): Cryptosuite;
}

declare module "@digitalbazaar/ed25519-multikey" {
  interface KeyPair {
    readonly publicKeyMultibase: string;
    signer(): { sign(message: { data: Uint8Array }): Promise<Uint8Array> };
  }
  export function generate(options: { seed: Uint8Array }): Promise<KeyPair>;
}
