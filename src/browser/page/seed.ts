/** A seed that nobody has had before: 64 random bits as text. */
export function newSeed(): string {
  return [...crypto.getRandomValues(new Uint32Array(2))].map((word) => word.toString(36)).join("-");
}
