/** What mentors have signed, as a file by itself: one statement, or the list of them that the Mentor's desk saves. */
import { isList, isObject } from "./fields.ts";
import type { Json } from "./json.ts";

export interface GivenStatement {
  readonly json: Json;
  /** Where in the file: `[0]`; undefined where the file holds no other. */
  readonly at: string | undefined;
}

/**
 * The statements of a file, each to be judged by itself; undefined where it holds none, and is perhaps a record. In a list with
 * anything signed in it whatever else stands there counts as one too, so that it is told at its place. O(statements).
 */
export function givenStatements(json: Json): readonly GivenStatement[] | undefined {
  const all = isList(json) ? json : [json];
  if (!all.some(isSigned)) return undefined;
  return all.map((each, place) => ({ json: each, at: all.length > 1 ? `[${place}]` : undefined }));
}

/** The same of a file that can be nothing else: where it holds none, the whole is told as a statement that is none. */
export const statementsIn = (json: Json): readonly GivenStatement[] =>
  givenStatements(json) ?? [{ json, at: undefined }];

const isSigned = (json: Json): boolean =>
  isObject(json) && (Object.hasOwn(json, "proof") || Object.hasOwn(json, "credentialSubject"));
