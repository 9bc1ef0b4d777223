/** Values of a file as messages quote them. */
import type { Json } from "./json.ts";

const longest = 160;

/** On one line, cut where it is long. */
export function quoted(value: Json | undefined): string {
  if (value === undefined) return "nothing";
  const text = JSON.stringify(value);
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}
