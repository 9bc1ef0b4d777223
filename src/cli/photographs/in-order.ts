/** Which photograph comes after which. */
import type { Taken } from "./taken.ts";

export interface Photograph {
  /** The file's name. */
  readonly name: string;
  readonly taken: Taken | undefined;
}

export interface Ordered<Picture extends Photograph> {
  readonly pictures: readonly Picture[];
  readonly by: "time" | "name";
}

/**
 * By the time at which they were taken, where each says when: two of the same moment by name. Where one does not say, all by name, because
 * nothing tells where that one belongs among the others. Names are compared as people count: "2.jpg" before "10.jpg". Where each
 * says how far its clock is ahead of UTC, moments are compared, otherwise what the clocks showed. O(n log n).
 */
export function inOrder<Picture extends Photograph>(pictures: readonly Picture[]): Ordered<Picture> {
  const named = [...pictures].sort(byName);
  const clocks = named.flatMap(({ taken }) => taken ?? []);
  if (clocks.length < named.length) return { pictures: named, by: "name" };
  const isOfOneTime = clocks.every(({ ahead }) => ahead !== undefined);
  const moment = ({ taken }: Picture): number => taken!.clock - (isOfOneTime ? taken!.ahead! * 60_000 : 0);
  // The sort is stable, so that those of one moment stay by name.
  return { pictures: named.sort((a, b) => moment(a) - moment(b)), by: "time" };
}

const { compare } = new Intl.Collator("en", { numeric: true });
const byName = (a: Photograph, b: Photograph): number =>
  compare(a.name, b.name) || (a.name < b.name ? -1 : 1);
