import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { contentFolder } from "./content.ts";

export const newCommand: Command = {
  name: "new",
  summary: "starts a module that passes check",
  usage: "module ID [--content DIR] [--json]",
  options: { content: contentOption, json: jsonOption },
  run(call, output) {
    const [what, id, ...more] = call.positionals;
    if (what !== "module" || id === undefined || more.length > 0)
      throw new WrongCall("Say: benchwright new module ID");
    if (!/^[a-z][a-z0-9-]*$/.test(id))
      throw new WrongCall(
        `"${id}" is not a good id: use lower-case letters, digits and hyphens, beginning with a letter.`,
      );
    const content = contentFolder(call);
    const folder = join(content, "modules", id);
    if (existsSync(folder)) throw new WrongCall(`${folder} exists already.`);
    const file = join(folder, "module.md");
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, template(id));
    const programme = join(content, "programme.yaml");
    const files = existsSync(programme) ? [file] : [file, programme];
    if (files.length > 1) writeFileSync(programme, "name: Our workshop\nsession: 2 h 30 min\npass: 80 %\n");
    if (call.flag("json")) printJson(output, { file, files });
    else output.out(`Written: ${files.join(", ")}\nFill it in; benchwright check tells what is amiss.\n`);
    return 0;
  },
};

const titleOf = (id: string): string => `${id[0]!.toUpperCase()}${id.slice(1).replaceAll("-", " ")}`;

const template = (id: string): string => `---
title: ${titleOf(id)}
summary: What this module is for, in one sentence.
revision: 1
parts:
  cover: {name: cover, held-by: [cover-screws], covers: [works]}
  works: {name: works}
fasteners:
  cover-screws: {name: cover screws, count: 2, drive: slotted, keep: tray A}
---

What this module is about, in a few sentences.

## Take the cover off

\`\`\`yaml step
id: cover-off
remove: [cover-screws, cover]
time: 5 min
check: the works can be seen
\`\`\`

How it is done.

## Clean the works

\`\`\`yaml step
id: clean-works
work: [works]
time: 10 min
\`\`\`

How it is done.

## Put the cover back

\`\`\`yaml step
id: cover-on
refit: [cover, cover-screws]
tighten: [cover-screws]
time: 5 min
\`\`\`

How it is done.
`;
