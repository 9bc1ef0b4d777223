/** How many pages a build has to make and how many it has made: in memory that hands on all threads share. */
import type { PageGroup } from "./eleventy.ts";
import type { Page } from "./page.ts";

/** Made by `pageCount`; it may be sent to another thread, and is the same one there. */
export type PageCount = Int32Array<SharedArrayBuffer>;

const [wanted, made, silent] = [0, 1, 2];

/** `hands` is how many share the pages out among them. */
export function pageCount(hands: number): PageCount {
  const count = new Int32Array(new SharedArrayBuffer(12));
  count[silent] = hands;
  return count;
}

/** Undefined until all hands have said how many pages they make. Pages of the programme come to it once those of modules are made. */
export function readCount(count: PageCount): { readonly made: number; readonly wanted: number } | undefined {
  if (Atomics.load(count, silent) > 0) return undefined;
  return { made: Atomics.load(count, made), wanted: Atomics.load(count, wanted) };
}

/** The same pages, each of which counts once it is made: all that a hand makes at a time. Without a count they are left as they are. */
export function counting(groups: readonly PageGroup[], count: PageCount | undefined): readonly PageGroup[] {
  if (count === undefined) return groups;
  const all = groups.reduce((sum, { pages }) => sum + pages.length, 0);
  Atomics.add(count, wanted, all);
  Atomics.sub(count, silent, 1);
  return groups.map(({ name, pages }) => ({
    name,
    pages: pages.map((page) => ({ ...page, make: () => counted(page, count) })),
  }));
}

function counted({ make }: Page, count: PageCount): string {
  const text = make();
  Atomics.add(count, made, 1);
  return text;
}
