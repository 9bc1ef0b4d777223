/** The digest by which an edition's list names a file: the first 128 bits of its SHA-256 in base64url. */
export async function digestOf(content: ArrayBuffer): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", content)).subarray(0, 16);
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
