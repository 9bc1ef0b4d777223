/** Record files of a folder, one after the other. */
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { readRecord } from "../../engine/competency/record-file.ts";
import { filesIn } from "../files-in.ts";
import { nodePrimitives } from "../primitives.ts";
import { readText } from "./read-text.ts";

/** Paths of all `*.record.json` below a folder, sorted. Throws a BadInput where there is no such folder. */
export const recordFiles = (folder: string): string[] => filesIn(folder, [".record.json"]);

export interface FileRead {
  readonly file: string;
  readonly record: CompetencyRecord | undefined;
  readonly written: string | undefined;
  readonly problems: readonly RecordProblem[];
}

export function readRecordFile(file: string): FileRead {
  const text = readText(file);
  if (!text.ok) return { file, record: undefined, written: undefined, problems: [text.problem] };
  return { file, ...readRecord(text.text, nodePrimitives) };
}
