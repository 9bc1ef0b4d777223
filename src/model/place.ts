import type { Place } from "./diagnostic.ts";

/** The place of an offset (UTF-16 units from 0) in a text; an offset past the end means the end. */
export function placeAt(file: string, text: string, offset: number): Place {
  const before = text.slice(0, Math.max(0, offset));
  const line = before.split("\n").length;
  return { file, line, column: before.length - before.lastIndexOf("\n") };
}
