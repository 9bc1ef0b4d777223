import { mix32 } from "../../engine/quiz/random.ts";

/** Tells one text from another, not against those who want to deceive: 32 bits, as text. O(length). */
export function fingerprint(text: string): string {
  let word = 0;
  for (let i = 0; i < text.length; i++) word = mix32(word ^ text.charCodeAt(i));
  return word.toString(36);
}
