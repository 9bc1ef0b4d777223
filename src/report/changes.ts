/** What has changed between two checks of the same content. */
import type { Diagnostic } from "../model/diagnostic.ts";
import { type Paint, reportBlocks, summary, waitingWords } from "./text.ts";

export interface Changes {
  /** Reported before and no longer. */
  readonly mended: readonly Diagnostic[];
  /** No longer reported, but only because something else in the file must be mended before it can be looked at. */
  readonly waiting: readonly Diagnostic[];
  readonly fresh: readonly Diagnostic[];
}

/**
 * A fault is the same one where code, file and message are, for lines move while one writes; of several that are alike in all
 * three as many stay as there are in both. O(faults).
 */
export function changesBetween(before: readonly Diagnostic[], after: readonly Diagnostic[]): Changes {
  const isHeldUp = new Set(after.filter(({ holdsUp }) => holdsUp).map(({ file }) => file));
  const gone = without(before, after);
  return {
    mended: gone.filter(({ file }) => !isHeldUp.has(file)),
    waiting: gone.filter(({ file }) => isHeldUp.has(file)),
    fresh: without(after, before),
  };
}

/** Those of `all` that are not among `others`. */
function without(all: readonly Diagnostic[], others: readonly Diagnostic[]): Diagnostic[] {
  const left = new Map<string, number>();
  for (const one of others) left.set(keyOf(one), (left.get(keyOf(one)) ?? 0) + 1);
  return all.filter((one) => {
    const count = left.get(keyOf(one)) ?? 0;
    left.set(keyOf(one), count - 1);
    return count <= 0;
  });
}

const keyOf = ({ code, file, message }: Diagnostic): string => `${code}\n${file}\n${message}`;

/** For people: the new faults whole, those that went by a line each, a count. "" where nothing has changed. */
export function changesText(
  { mended, waiting, fresh }: Changes,
  after: readonly Diagnostic[],
  texts: ReadonlyMap<string, string>,
  paint: Paint,
): string {
  if (mended.length + waiting.length + fresh.length === 0) return "";
  const line = (word: string) => (one: Diagnostic) =>
    `${word}: ${one.file}  ${paint(one.code, "quiet")}\n  ${one.message}`;
  return [
    ...mended.map(line("mended")),
    ...waiting.map(line("not looked at again yet")),
    ...reportBlocks(fresh, texts, paint),
    `${mended.length} mended, ${fresh.length} new; still ${summary(after)}${waitingWords(after)}`,
  ].join("\n\n");
}
