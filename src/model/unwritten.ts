/** The words by which a draft says what its author has not written yet; the starter writes them, `check` looks for them. */

/** In a title, text, alt text or summary. */
export const unwritten = "still to be written";

/** What the title and the summary of a draft begin with, so that it never looks like a finished sheet. */
export const draftOpening = "Draft:";

/** What stands in a module or sheet that was just begun, where the author's own words belong. */
export const prompts = {
  summary: "What this module is for, in one sentence.",
  about: "What this module is about, in a few sentences.",
  know: "What one has to know, and how one learns to see it.",
  do: "How it is done, and how one tells that it is done well.",
  step: "How it is done.",
  tool: "What it is, in one sentence.",
  toolUse: "what it is used for",
  care: "What keeps it in order.",
  choosing: "How it is chosen, held and tried before use.",
  substance: "What it is and what it is for, in one sentence.",
  dataSheet: "Where its safety data sheet is kept. What it says decides.",
  instead: "What milder thing is tried first.",
  whereUsed: "Where it may be used and where not, and what becomes of the rags.",
  danger: "What can happen, in one sentence.",
  hazard: "What it is that can hurt someone.",
  consequence: "What it does to them.",
  avoid: "The first thing to do so that it does not happen.",
  recognising: "How it is recognised, and what to do when it has happened.",
} as const;

const promptTexts: ReadonlySet<string> = new Set(Object.values(prompts));

/** However its lines are broken. O(length). */
export function isUnwritten(text: string): boolean {
  const line = text.replace(/\s+/g, " ").trim();
  return line.startsWith(draftOpening) || promptTexts.has(line) || line.toLowerCase().includes(unwritten);
}
