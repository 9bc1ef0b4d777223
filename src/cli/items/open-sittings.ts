import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { longestSitting } from "../../engine/quiz/sitting-file.ts";
import { readAnswersText } from "../answers-file.ts";
import { BadInput } from "../command.ts";
import { openLines } from "./open-lines.ts";

interface SittingText {
  readonly text: string;
  /** Where it stands, for messages. */
  readonly at: string;
}

/**
 * The texts of sittings: the lines of a file, empty ones left out, or the `.sitting.json` files of a folder by name. Throws a
 * BadInput for one of more than 1 MiB, or where there is nothing at the path.
 */
export async function* openSittings(path: string): AsyncGenerator<SittingText> {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) yield* inFolder(path);
  else yield* inLines(path);
}

function* inFolder(folder: string): Generator<SittingText> {
  const names = readdirSync(folder).filter((name) => name.endsWith(".sitting.json"));
  for (const name of names.sort()) {
    const at = join(folder, name);
    yield { text: readAnswersText(at), at };
  }
}

async function* inLines(file: string): AsyncGenerator<SittingText> {
  let number = 0;
  for await (const text of openLines(file)) {
    number++;
    if (text.length > longestSitting)
      throw new BadInput(`${file}:${number}: the line is longer than ${longestSitting} characters`);
    if (text.trim() !== "") yield { text, at: `${file}:${number}` };
  }
}
