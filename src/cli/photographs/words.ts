/** What is said once a draft is written. */
import type { PhotographDraft } from "./draft.ts";
import { someOf } from "./in-folder.ts";

/** Where it is, in which order and why, what was left out, what is next. `written` are the files, the module first. */
export function draftWords({ by, placed, leftOut }: PhotographDraft, written: readonly string[]): string {
  return [
    `Written: ${written[0]}, with ${placed.length === 1 ? "a figure" : `${placed.length} figures`} beside it`,
    placed.length === 1 ? `Step 1 is ${placed[0]!.photograph}` : orderWords({ by, placed }),
    ...(leftOut.length === 0 ? [] : [`Left out, because they are no pictures: ${someOf(leftOut)}`]),
    "It is a draft: say at each step what is done, and in its alt text what is to be seen; benchwright check warns of what is still to be written, and of each step until it says what is worked on.\n",
  ].join("\n");
}

function orderWords({ by, placed }: Pick<PhotographDraft, "by" | "placed">): string {
  const silent = placed.filter(({ taken }) => taken === null).map(({ photograph }) => photograph);
  const order =
    by === "time"
      ? "by the time at which they were taken (EXIF)"
      : `by the names of the files, because no time of taking (EXIF) is in ${silent.length === placed.length ? "them" : someOf(silent)}`;
  return `Order: ${order}: step 1 is ${placed[0]!.photograph}, step ${placed.length} is ${placed.at(-1)!.photograph}`;
}
