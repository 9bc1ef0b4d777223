import { t } from "../../engine/words.ts";

export { counted } from "../../engine/words.ts";

/** A sentence, and reasons for it that stand below where there are several. */
export interface Told {
  readonly text: string;
  readonly reasons: readonly string[];
}

/** That one step must come before another, and why; steps by their titles. */
export function pairWords(first: string, then: string, reasons: readonly string[]): Told {
  const pair = t`“${first}” must come before “${then}”`;
  if (reasons.length > 1)
    return { text: `${pair}:`, reasons: reasons.map((each) => sentence(capital(each))) };
  return { text: sentence([pair, ...reasons].join(": ")), reasons: [] };
}

/** Ends a phrase as a sentence, unless it ends as one already. */
export function sentence(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}

/** With a capital letter first. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
