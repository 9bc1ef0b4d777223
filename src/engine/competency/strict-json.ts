/** JSON of a file that nobody vouches for: read only where every reader would read the same. */
import { t } from "../words.ts";
import type { Json } from "./json.ts";
import { jsonFault } from "./json-fault.ts";
import type { RecordProblem } from "./problems.ts";

/** What came out of reading something: the value, or why not. */
export type ReadJson =
  | { readonly ok: true; readonly value: Json }
  | { readonly ok: false; readonly problem: RecordProblem };

/** Bytes of a file. Whoever opens one looks at its size first and reads nothing that is larger. */
export const largestFile = 16 * 1024 * 1024;

/** The problem of a file that is too large to be read. */
export const tooLarge = (bytes: number): RecordProblem => ({
  code: "too-large",
  message: t`The file is too large: ${Math.ceil(bytes / 1024 / 1024)} MiB, where 16 MiB is the most. A record of many years is far smaller; choose another file.`,
});

/**
 * Reads a text of at most 16 Mi letters, nested at most 64 deep, by I-JSON (RFC 7493): names once in each object, no lone
 * surrogates, numbers that are finite; and no `__proto__`. So canonical JSON can be made of whatever is read. O(length),
 * without recursion.
 */
export function readJson(text: string): ReadJson {
  if (text.length > largestFile) return { ok: false, problem: tooLarge(text.length) };
  const problem = jsonFault(text);
  if (problem !== undefined) return { ok: false, problem };
  try {
    return { ok: true, value: JSON.parse(text) as Json };
  } catch (error) {
    return { ok: false, problem: notJson(text, error) };
  }
}

function notJson(text: string, error: unknown): RecordProblem {
  const place = /position (\d+)/.exec(String(error))?.[1];
  const where = place === undefined ? "" : t` at line ${text.slice(0, Number(place)).split("\n").length}`;
  return {
    code: "not-json",
    message: t`The file is not JSON, or not all of it is there: reading stopped${where}. Take it again from the person who has it, as a file, not as text copied out of a message.`,
  };
}
