/** What is said once a draft is written. */
import type { PhotographDraft } from "./draft.ts";
import { someOf } from "./in-folder.ts";

/** Where it is, in which order and why, what was left out, what is next. `written` are the files, the module first. */
export function draftWords({ by, placed, leftOut }: PhotographDraft, written: readonly string[]): string {
  const [first, last] = [placed[0]!, placed.at(-1)!];
  const silent = placed.filter(({ taken }) => taken === null).map(({ photograph }) => photograph);
  const order =
    by === "time"
      ? "by the time at which they were taken (EXIF)"
      : `by the names of the files, because no time of taking (EXIF) is in ${silent.length === placed.length ? "them" : someOf(silent)}`;
  return [
    `Written: ${written[0]}, with ${placed.length === 1 ? "a figure" : `${placed.length} figures`} beside it`,
    `Order: ${order}: step 1 is ${first.photograph}, step ${placed.length} is ${last.photograph}`,
    ...(leftOut.length === 0 ? [] : [`Left out, because they are no pictures: ${someOf(leftOut)}`]),
    "It is a draft: say at each step what is done, and in its alt text what is to be seen; benchwright check warns of each step until it says what is worked on.\n",
  ].join("\n");
}
