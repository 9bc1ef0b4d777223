/** The sound programme and a module that takes its box apart, with another one that puts it together. */
import { type Files, withFile } from "./content-folder.ts";

const things = (lid: string): string => `parts:
  lid: {name: lid, held-by: [lid-screws], covers: [wheel]}
  wheel: {name: wheel}
fasteners:
  lid-screws: {name: lid screws, count: 4, keep: tray A}
state:
  power: {name: spring, values: [wound, let down], starts: ${lid}`;

export const stripText = `---
title: Take it apart
summary: All out.
revision: 1
${things("wound, ends: let down}")}
leaves: {lid: {to: build}, lid-screws: {to: build}, wheel: {to: build}}
---

## Let the spring down

\`\`\`yaml step
id: down
makes: {power: let down}
\`\`\`

## Take the lid off

\`\`\`yaml step
id: lid-off
remove: [lid-screws, lid]
while: {power: let down}
\`\`\`

## Take the wheel out

\`\`\`yaml step
id: wheel-off
remove: [wheel]
\`\`\`
`;

export const buildText = `---
title: Put it together
summary: All in.
revision: 1
begins-from: strip
${things("let down}")}
---

## Put the wheel in

\`\`\`yaml step
id: wheel-on
refit: [wheel]
\`\`\`

## Put the lid on

\`\`\`yaml step
id: lid-on
refit: [lid, lid-screws]
tighten: [lid-screws]
\`\`\`
`;

export const twoModules: Files = withFile(
  "modules/build/module.md",
  buildText,
  withFile("modules/strip/module.md", stripText),
);
