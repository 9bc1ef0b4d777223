/** Compares JSON that came from outside with what it should be. */
import { at, isList, isObject } from "./fields.ts";
import type { Json } from "./json.ts";

export interface Difference {
  /** `credentialSubject.result[0].value`. */
  readonly path: string;
  readonly expected: Json;
  readonly found: Json | undefined;
}

/**
 * The first place where `found` is not as expected; undefined where there is none. Lists must be of the same length; fields
 * that are not expected are passed over. Where `isFree` is true of a path, any text will do. O(size of what is expected).
 */
export function firstDifference(
  expected: Json,
  found: Json | undefined,
  isFree: (path: string) => boolean,
  path = "",
): Difference | undefined {
  if (typeof expected === "string" && typeof found === "string" && isFree(path)) return undefined;
  if (!isObject(expected) && !isList(expected))
    return expected === found ? undefined : { path, expected, found };
  if (!isLike(expected, found)) return { path, expected, found };
  for (const [name, part] of Object.entries(expected)) {
    const place = isList(expected) ? `${path}[${name}]` : `${path}.${name}`.replace(/^\./, "");
    const difference = firstDifference(part, at(found, name), isFree, place);
    if (difference !== undefined) return difference;
  }
  return undefined;
}

const isLike = (expected: Json, found: Json | undefined): boolean =>
  isList(expected) ? isList(found) && found.length === expected.length : isObject(found);
