/** Sheets of a made-up programme: tools, substances, hazards. */
import type { Random } from "./random.ts";
import { hazardNames, sentence, substanceNames, toolNames } from "./words.ts";

export type SheetFolder = "tools" | "substances" | "hazards";
export type SheetIds = Record<SheetFolder, string[]>;

export interface SheetText {
  readonly folder: SheetFolder;
  readonly id: string;
  readonly text: string;
}

const idOf = (name: string): string => name.toLowerCase().replaceAll(" ", "-");

const fields: Record<SheetFolder, string> = {
  tools: "use: [work at the bench]\ncare: Wipe it and hang it up.",
  substances: `use: [cleaning]
flammable: false
signal: none
pictograms: []
statements: []
data-sheet: The supplier's safety data sheet is in the folder by the door, and it decides.`,
  hazards: `signal: caution
hazard: Something moves that was still.
consequence: A hand is hurt.
avoid: [Keep hands where they can be seen.]`,
};

const names: readonly (readonly [SheetFolder, readonly string[]])[] = [
  ["tools", toolNames],
  ["substances", substanceNames],
  ["hazards", hazardNames],
];

export function sheets(random: Random): SheetText[] {
  return names.flatMap(([folder, titles]) =>
    titles.map((title) => ({
      folder,
      id: idOf(title),
      text: `---
title: ${title}
summary: ${sentence(random.pick)}
${fields[folder]}
---

${Array.from({ length: 12 }, () => sentence(random.pick)).join(" ")}

## Looking after it

${Array.from({ length: 6 }, () => sentence(random.pick)).join(" ")}
`,
    })),
  );
}
