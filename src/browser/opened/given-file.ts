/** A file that someone hands over, as text; what is too large is not even read. */

import type { RecordProblem } from "../../engine/competency/problems.ts";
import { largestFile, tooLarge } from "../../engine/competency/strict-json.ts";
import { t } from "../../engine/words.ts";

export type GivenText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: RecordProblem };

/** Of a `File`, what is used here. */
export interface Given {
  readonly name: string;
  readonly size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

export async function textOf(file: Given): Promise<GivenText> {
  if (file.size > largestFile) return { ok: false, problem: tooLarge(file.size) };
  try {
    return { ok: true, text: decoded(await file.arrayBuffer()) };
  } catch (error) {
    return { ok: false, problem: error instanceof TypeError ? notText : unreadable };
  }
}

/** Throws a TypeError on bytes that are no UTF-8: read as signs of replacement, another text would be judged. */
const decoded = (bytes: ArrayBuffer): string => new TextDecoder("utf-8", { fatal: true }).decode(bytes);

const notText: RecordProblem = {
  code: "not-json",
  message: t`The file is not text in UTF-8; expected a record (*.record.json) or a signed statement. A picture or a print of one can’t be checked: ask for the file itself.`,
};
const unreadable: RecordProblem = {
  code: "not-json",
  message: t`The browser could not read the file. Choose it again; if it lies elsewhere, copy it to this device first.`,
};
