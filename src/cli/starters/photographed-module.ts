/** A module begun with photographs: a step a picture, all words still to be written. */
import { titleOf } from "./starter.ts";

/**
 * `figures` are pictures in the order of the steps, relative to the module. It passes `check` as it is; that it is a draft stands where its
 * readers look: in the summary, at the top, and at each step in title, words and alt text.
 */
export const photographedModuleText = (id: string, figures: readonly string[]): string => `---
title: ${titleOf(id)}
summary: "Draft from photographs: what this module is for, in one sentence, is still to be written."
revision: 1
---

This is a draft, made of ${figures.length === 1 ? "a photograph" : `${figures.length} photographs`}. It is no instruction yet: nobody has said what is done, what comes off and what can hurt.
To finish it, go through the steps one by one:

- Leave out what shows no step, and put what belongs together into one step.
- Give each step its title and say in a few sentences what is done.
- Say in the alt text what is to be seen, for those who can't see it.
- Name the parts and fasteners at the head of the file, and what each step removes, works on and refits.
- Name tools, substances and hazards; see that no face, address or name plate is to be seen.

${figures.map((figure, at) => stepText(figure, at + 1)).join("\n")}`;

const stepText = (figure: string, number: number): string => `## Step ${number}: what is done here

\`\`\`yaml step
id: step-${number}
figure: {file: ${figure}, alt: "Step ${number}: what is to be seen here is still to be written"}
\`\`\`

What is done here is still to be written.
`;
