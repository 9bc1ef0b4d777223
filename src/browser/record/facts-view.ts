/** The title block of the record. */

export interface RecordFacts {
  readonly name: string;
  readonly date: string;
  readonly key: string;
  readonly saved: string;
}

/** What is empty stays a blank to be filled in by hand. */
export function fillFacts(page: HTMLElement, facts: RecordFacts): void {
  for (const field of page.querySelectorAll<HTMLElement>("[data-fact]")) {
    const value = facts[field.dataset.fact as keyof RecordFacts];
    field.querySelector("dd")!.textContent = value;
  }
}

/** Enough of a key to tell it from another at a glance: its last letters. */
export const shortKey = (did: string): string => `… ${did.slice(-8)}`;
