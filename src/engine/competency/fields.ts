/** Reads fields of JSON that nobody vouches for: own fields only, whatever their names. */
import type { Json, JsonObject } from "./json.ts";

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

/** What stands at the end of a path of field names and places in lists; undefined where the path leads nowhere. */
export function at(value: Json | undefined, ...path: readonly (string | number)[]): Json | undefined {
  let found = value;
  for (const step of path) {
    if (typeof found !== "object" || found === null || !Object.hasOwn(found, step)) return undefined;
    found = (found as { readonly [step: string | number]: Json })[step];
  }
  return found;
}

/** The text at the end of the path; undefined of anything else. */
export function textAt(value: Json | undefined, ...path: readonly (string | number)[]): string | undefined {
  const found = at(value, ...path);
  return typeof found === "string" ? found : undefined;
}

/** The object without one of its fields. */
export function without(object: JsonObject, name: string): JsonObject {
  const { [name]: _, ...others } = object;
  return others;
}
