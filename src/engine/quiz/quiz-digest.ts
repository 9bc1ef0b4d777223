/** Tells a quiz from what it was before it was changed. */
import type { Quiz } from "./quiz.ts";
import { wordsOf } from "./random.ts";
import { withoutKey } from "./without-key.ts";

/**
 * 128 bits, as text: the same for the same questions, paper and mark. Of a supervised quiz it covers what its page shows, so
 * that the page, which has no key, and whoever has the whole quiz come to the same; a key may be mended without another
 * digest. Not against those who want to deceive. O(size).
 */
export function quizDigest({ pass, paper, supervised = false, questions }: Quiz): string {
  const shown = supervised ? questions.map(withoutKey) : questions;
  const text = JSON.stringify({ pass, paper, supervised, questions: shown }, inOrder);
  return wordsOf(text)
    .map((word) => word.toString(16).padStart(8, "0"))
    .join("");
}

/** Fields in the order of the alphabet, for JSON that came by another way may have them in another. */
function inOrder(_name: string, value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
