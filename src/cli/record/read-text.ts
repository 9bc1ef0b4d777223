/** Reads a file that nobody vouches for: small enough, and text. */
import { isUtf8 } from "node:buffer";
import { closeSync, fstatSync, openSync, readFileSync } from "node:fs";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import { largestFile, type ReadJson, readJson, tooLarge } from "../../engine/competency/strict-json.ts";

export type ReadText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: RecordProblem };

/** Reads nothing of what is larger than the limit, and no device or folder. */
export function readText(file: string): ReadText {
  try {
    const descriptor = openSync(file, "r");
    try {
      const { size } = fstatSync(descriptor);
      if (!fstatSync(descriptor).isFile()) return notJson("It is not a file.");
      if (size > largestFile) return { ok: false, problem: tooLarge(size) };
      const bytes = readFileSync(descriptor);
      if (!isUtf8(bytes))
        return notJson("The file is not text in UTF-8. Take it again from the person who has it.");
      return { ok: true, text: bytes.toString("utf8").replace(/^\uFEFF/, "") };
    } finally {
      closeSync(descriptor);
    }
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return notJson("There is no such file.");
    return notJson(`The file can't be read: ${cause instanceof Error ? cause.message : String(cause)}.`);
  }
}

/** The JSON of such a file. */
export function readJsonFile(file: string): ReadJson {
  const text = readText(file);
  return text.ok ? readJson(text.text) : text;
}

const notJson = (message: string): ReadText => ({ ok: false, problem: { code: "not-json", message } });
