import { prompts } from "../../model/unwritten.ts";
import { titleOf } from "./starter.ts";

export const toolText = (id: string, drive?: string): string => `---
title: ${titleOf(id)}
summary: ${prompts.tool}
${drive === undefined ? "" : `drive: ${drive}\n`}use: [${prompts.toolUse}]
care: ${prompts.care}
---

${prompts.choosing}
`;

/** Begins on the safe side: as flammable as any, with the stronger signal word, until someone has read the label. */
export const substanceText = (id: string): string => `---
title: ${titleOf(id)}
summary: ${prompts.substance}
use: [cleaning]        # cleaning, drying, lubricating, penetrating
flammable: true        # as its safety data sheet says
signal: danger         # as its label says: danger, warning or none
data-sheet: ${prompts.dataSheet}
instead: ${prompts.instead}
---

${prompts.whereUsed}
`;

export const hazardText = (id: string): string => `---
title: ${titleOf(id)}
summary: ${prompts.danger}
signal: warning        # danger, warning or caution; notice where only things are harmed
hazard: ${prompts.hazard}
consequence: ${prompts.consequence}
avoid:
  - ${prompts.avoid}
---

${prompts.recognising}
`;
