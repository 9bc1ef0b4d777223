/** Bytes as text that may stand in an address. */

/** base64url of RFC 4648, section 5, without padding. */
export const toText = (bytes: Iterable<number>): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");

/** Undefined where the text is no base64url. */
export function fromText(text: string): number[] | undefined {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return undefined;
  const plain = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  return Array.from(plain, (each) => each.charCodeAt(0));
}
