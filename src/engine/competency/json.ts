/** JSON values, as they come from a file that nobody vouches for. */

export type Json = string | number | boolean | null | readonly Json[] | JsonObject;

/** Read its fields by `Object.hasOwn` or `Object.entries` only: names come from the file. */
export interface JsonObject {
  readonly [name: string]: Json;
}
