import { titleOf } from "./starter.ts";

export const toolText = (id: string, drive?: string): string => `---
title: ${titleOf(id)}
summary: What it is, in one sentence.
${drive === undefined ? "" : `drive: ${drive}\n`}use: [what it is used for]
care: What keeps it in order.
---

How it is chosen, held and tried before use.
`;

/** Begins on the safe side: as flammable as any, with the stronger signal word, until someone has read the label. */
export const substanceText = (id: string): string => `---
title: ${titleOf(id)}
summary: What it is and what it is for, in one sentence.
use: [cleaning]        # cleaning, drying, lubricating, penetrating
flammable: true        # as its safety data sheet says
signal: danger         # as its label says: danger, warning or none
data-sheet: Where its safety data sheet is kept. What it says decides.
instead: What milder thing is tried first.
---

Where it may be used and where not, and what becomes of the rags.
`;

export const hazardText = (id: string): string => `---
title: ${titleOf(id)}
summary: What can happen, in one sentence.
signal: warning        # danger, warning or caution
hazard: What it is that can hurt someone.
consequence: What it does to them.
avoid:
  - The first thing to do so that it does not happen.
---

How it is recognised, and what to do when it has happened.
`;
