/** The JSON-LD contexts of what is signed. They are compared and never fetched: a context added later could change each word's meaning. */

const credentials = "https://www.w3.org/ns/credentials/v2";

/** Of observations, sign-offs and new keys, in this order. */
export const credentialContexts: readonly string[] = [
  credentials,
  "https://purl.imsglobal.org/spec/ob/v3p0/context-3.0.3.json",
];

/** Of lists of withdrawals. */
export const statusListContexts: readonly string[] = [credentials];
