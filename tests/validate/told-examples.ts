/** Of each code the first example that brings it about, as `check` tells it. */
import type { Code } from "../../src/model/codes.ts";
import { reportBlocks } from "../../src/report/text.ts";
import { writeFolder } from "../support/content-folder.ts";
import { diagnose } from "./diagnose.ts";
import { type Example, examples } from "./examples.ts";

export async function toldExamples(): Promise<Map<Code, string>> {
  const told = new Map<Code, string>();
  for (const example of examples) if (!told.has(example.code)) told.set(example.code, await tell(example));
  return told;
}

async function tell({ code, file, files }: Example): Promise<string> {
  const found = await diagnose(writeFolder(files));
  const one = found.find((each) => each.code === code && each.file === file);
  if (one === undefined) throw new Error(`the example of ${code} does not bring it about`);
  const texts = new Map(
    [...files].flatMap(([path, text]) => (typeof text === "string" ? [[path, text]] : [])),
  );
  return reportBlocks([one], texts, (word) => word).join("\n");
}
