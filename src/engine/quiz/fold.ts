/**
 * A text as it is compared with what was written by hand: case, accents and runs of spaces folded, compatibility forms
 * spelt out (Unicode NFKD without the combining diacritical marks, U+0300 to U+036F). Vowel signs of other scripts stay:
 * without them two words would be one.
 */
export function fold(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]+/g, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
}

/** Places of texts that read like an earlier one, each with that earlier place. O(n). */
export function repeats(texts: readonly string[]): { readonly first: number; readonly place: number }[] {
  const seen = new Map<string, number>();
  return texts.flatMap((text, place) => {
    const first = seen.get(fold(text));
    if (first === undefined) seen.set(fold(text), place);
    return first === undefined ? [] : [{ first, place }];
  });
}
