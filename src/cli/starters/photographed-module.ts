/** A module begun with photographs: a step a picture, all words still to be written. */
import { draftOpening, unwritten } from "../../model/unwritten.ts";
import { titleOf } from "./starter.ts";

export interface Photographed {
  /** Relative to the module. */
  readonly figure: string;
  /** The photograph's own file name: all by which the author finds it again. */
  readonly photograph: string;
  /** By the camera's clock, in ISO 8601 without an offset; null where it wrote no time. */
  readonly taken: string | null;
}

/**
 * `pictures` are in the order of the steps. It passes `check` as it is, with a warning for what is not written yet; that it is a draft
 * stands where its readers look: in title and summary, at the top, and at each step in title, words and alt text.
 */
export const photographedModuleText = (id: string, pictures: readonly Photographed[]): string => `---
title: "${draftOpening} ${titleOf(id)}"
summary: "${draftOpening} what this module is for, in one sentence, is ${unwritten}."
revision: 1
---

This is a draft, made of ${pictures.length === 1 ? "a photograph" : `${pictures.length} photographs`}. It is no instruction yet: what is done, what comes off and what can hurt is ${unwritten}.
To finish it, go through the steps one by one:

- Leave out what shows no step, and put what belongs together into one step.
- Give each step its title and say in a few sentences what is done.
- Say in the alt text what is to be seen, for those who can't see it.
- Keep the line with the photograph's name where it helps to find it again, or delete it.
- Name the parts and fasteners at the head of the file, and what each step removes, works on and refits.
- Name tools, substances and hazards; see that no face, address or name plate is to be seen.

Then delete this list, and “${draftOpening}” at the head of the file.

${pictures.map((picture, at) => stepText(picture, at + 1)).join("\n")}`;

/** The sheet puts the step's number before the title; the photograph's tells titles apart until they are written. */
const stepText = (
  { figure, photograph, taken }: Photographed,
  number: number,
): string => `## What is done here is ${unwritten} (photograph ${number})

\`\`\`yaml step
id: step-${number}
figure: {file: ${figure}, alt: "What is to be seen here is ${unwritten} (photograph ${number})"}
\`\`\`

What is done here is ${unwritten}.

Photograph: ${asWritten(photograph)}${taken === null ? "" : `, taken ${taken.slice(0, 16).replace("T", " ")}`}
`;

/** A name as code, whatever it is made of: between more backticks than it has in a row (CommonMark 0.31.2, 6.1). */
function asWritten(name: string): string {
  const plain = name.replace(/\p{C}/gu, "\ufffd");
  const runs = plain.match(/`+/g) ?? [];
  const marks = "`".repeat(1 + Math.max(0, ...runs.map(({ length }) => length)));
  const gap = /^[` ]|[` ]$/.test(plain) ? " " : "";
  return `${marks}${gap}${plain}${gap}${marks}`;
}
