/** The words by which a draft says what its author has not written yet; the starter writes them, `check` looks for them. */

/** In a title, text, alt text or summary. */
export const unwritten = "still to be written";

/** What the title and the summary of a draft begin with, so that it never looks like a finished sheet. */
export const draftOpening = "Draft:";

/** However its lines are broken. O(length). */
export const isUnwritten = (text: string): boolean =>
  text.trimStart().startsWith(draftOpening) || text.replace(/\s+/g, " ").toLowerCase().includes(unwritten);
