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
): Difference | undefined {
  return differenceBelow([], expected, found, isFree);
}

/** `steps` lead to what is compared, and are again what they were where there is no difference. */
function differenceBelow(
  steps: (string | number)[],
  expected: Json,
  found: Json | undefined,
  isFree: (path: string) => boolean,
): Difference | undefined {
  if (expected === found) return undefined;
  const isAlike = isList(expected)
    ? isList(found) && found.length === expected.length
    : isObject(expected) && isObject(found);
  if (!isAlike) {
    const path = pathOf(steps);
    const isText = typeof expected === "string" && typeof found === "string";
    return isText && isFree(path) ? undefined : { path, expected, found };
  }
  const names = isList(expected) ? expected.keys() : Object.keys(expected as object);
  for (const name of names) {
    steps.push(name);
    const difference = differenceBelow(steps, at(expected, name)!, at(found, name), isFree);
    if (difference !== undefined) return difference;
    steps.pop();
  }
  return undefined;
}

/** `["proof", 0, "type"]` as `proof[0].type`. */
export const pathOf = (steps: readonly (string | number)[]): string =>
  steps
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${step}`))
    .join("")
    .slice(steps[0] === undefined || typeof steps[0] === "number" ? 0 : 1);
