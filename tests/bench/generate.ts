/**
 * Makes a programme of any size, the same for the same seed: modules of 900 words with about 20 steps in phases, a quiz
 * of eight questions each, and sheets that they share. What it says is of no use at a bench; its shape is.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { moduleText } from "./module-text.ts";
import { quizText } from "./quiz-text.ts";
import { randomFrom } from "./random.ts";
import { type SheetIds, sheets } from "./sheet-text.ts";

export interface Size {
  readonly modules: number;
  readonly seed: number;
}

/** Writes the programme into a folder, which is made where there is none. */
export function generate(folder: string, { modules, seed }: Size): void {
  const random = randomFrom(seed);
  write(
    join(folder, "programme.yaml"),
    "name: A programme to be measured\nsession: 2 h 30 min\npass: 80 %\n",
  );
  const ids: SheetIds = { tools: [], substances: [], hazards: [] };
  for (const sheet of sheets(random)) {
    ids[sheet.folder].push(sheet.id);
    write(join(folder, sheet.folder, `${sheet.id}.md`), sheet.text);
  }
  for (let number = 0; number < modules; number++) {
    const made = moduleText(number, ids, random);
    write(join(folder, "modules", moduleId(number), "module.md"), made.text);
    write(join(folder, "modules", moduleId(number), "quiz.yaml"), quizText(made.steps, random));
  }
}

export const moduleId = (number: number): string => `module-${String(number).padStart(4, "0")}`;

function write(file: string, text: string): void {
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(file, text);
}
