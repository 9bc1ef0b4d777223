/** What counts as prose, against a module whose prose is told by hand. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { proseOf } from "./prose.ts";

const files = {
  "modules/mill/module.md": `---
title: Strip the mill
summary: Strip the mill
revision: 1
issued: 2026-11-20
needs: [files]
hazards: [pinch]
parts:
  lid: {name: lid, note: Sits on two pins.}
---

The body.

## Lift

\`\`\`yaml step
id: lift
hazards: [pinch, fumes]
mistakes: [{mistake: Pulling hard, result: It bends.}]
\`\`\`

Lift it.
`,
  "hazards/pinch.md": `---
title: Pinch point
summary: Not in a message.
signal: warning
hazard: It closes.
consequence: You are hurt.
avoid: [Keep away., Wait.]
---

Only on the sheet.
`,
};

test("body, texts of the data once, messages of the hazards; no ids, no counts, nothing else of a sheet", () => {
  const content = mkdtempSync(join(tmpdir(), "prose-"));
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(content, file, ".."), { recursive: true });
    writeFileSync(join(content, file), text);
  }
  const prose = proseOf(content, "mill");
  rmSync(content, { recursive: true });
  expect(prose.split("\n").filter((line) => line !== "")).toEqual([
    "The body.",
    "## Lift",
    "Lift it.",
    "Strip the mill",
    "Sits on two pins.",
    "Pulling hard",
    "It bends.",
    "Pinch point",
    "It closes.",
    "You are hurt.",
    "Keep away.",
  ]);
});
