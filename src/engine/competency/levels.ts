/** What a sign-off lets a person do, from least to most; each includes those before it. */

export const levels = ["under eye", "alone", "may teach"] as const;
export type Level = (typeof levels)[number];

/** How an observation ended. */
export const outcomes = ["watched", "unaided", "not yet", "stopped for safety"] as const;
export type Outcome = (typeof outcomes)[number];
