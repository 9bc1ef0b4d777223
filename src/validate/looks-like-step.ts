/** Blocks that their author took for steps: what is left out of a procedure unseen can hurt someone. */
import type { OtherBlock } from "../model/source.ts";
import { step } from "./schema/step.ts";

const fields: ReadonlySet<string> = new Set(Object.keys(step.shape));

/** Marked as a step in another way, or holding a step's fields: its id with another of them, or nothing but them. */
export function looksLikeStep({ info, value }: OtherBlock): boolean {
  if (/^(?:ya?ml\s+)?steps?\b/i.test(info)) return true;
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const names = Object.keys(value);
  const known = names.filter((name) => fields.has(name));
  return (known.length > 1 && known.includes("id")) || (known.length > 0 && known.length === names.length);
}
