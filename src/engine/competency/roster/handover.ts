/** What leaves with a person when nobody else can do it. */
import type { Entry, ModuleEntries } from "./summary.ts";

export interface Handover {
  readonly module: string;
  readonly title: string;
  readonly holder: Entry;
  /** Who could be next: those nearest to a sign-off first. */
  readonly next: readonly Entry[];
  /** What is not written down yet: to be asked of the holder while they are there. */
  readonly unwritten: readonly string[];
}

/** More names than these help nobody to choose. */
const mostNext = 5;

/** Of a module that exactly one person holds; empty of any other. O(people · log people). */
export function handoverOf(entries: ModuleEntries, unwritten: readonly string[]): Handover[] {
  const { module, title, alone, toSign, toWatch, others } = entries;
  const [holder, second] = alone;
  if (holder === undefined || second !== undefined) return [];
  const next = [...toSign, ...nearestFirst(toWatch), ...nearestFirst(others)].slice(0, mostNext);
  return [{ ...{ module, title, holder, unwritten }, next }];
}

const nearestFirst = (entries: readonly Entry[]): Entry[] =>
  entries.toSorted((a, b) => a.state.missing.length - b.state.missing.length);
