import { prompts } from "../../model/unwritten.ts";
import { titleOf } from "./starter.ts";

/** What a module names besides its own parts. */
export interface Named {
  readonly tool: string;
  readonly hazard: string;
}

/** A module of three steps that opens a cover, cleans what lies under it and closes it. */
export const moduleText = (id: string, named?: Named): string => `---
title: ${titleOf(id)}
summary: ${prompts.summary}
revision: 1
${named === undefined ? "" : `tools: [${named.tool}]\nhazards: [${named.hazard}]\n`}parts:
  cover: {name: cover, held-by: [cover-screws], covers: [works]}
  works: {name: works}
fasteners:
  cover-screws: {name: cover screws, count: 2, ${named === undefined ? "" : "drive: slotted, "}keep: tray A}
---

${prompts.about}

## Take the cover off

\`\`\`yaml step
id: cover-off
remove: [cover-screws, cover]
${named === undefined ? "" : `tools: [${named.tool}]\nhazards: [${named.hazard}]\n`}time: 5 min
check: the works can be seen
\`\`\`

${prompts.step}

## Clean the works

\`\`\`yaml step
id: clean-works
work: [works]
time: 10 min
\`\`\`

${prompts.step}

## Put the cover back

\`\`\`yaml step
id: cover-on
refit: [cover, cover-screws]
tighten: [cover-screws]
${named === undefined ? "" : `tools: [${named.tool}]\n`}time: 5 min
\`\`\`

${prompts.step}
`;
