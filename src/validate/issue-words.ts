/** What a schema finds, in words: what stands there, and what should. */
import type { z } from "zod";
import { type Code, codes } from "../model/codes.ts";
import type { YamlPath } from "../model/source.ts";
import { nearestWords } from "./nearest.ts";

export type Issue = z.core.$ZodIssue;

export interface IssueWords {
  readonly code: Code;
  readonly path: YamlPath;
  readonly end: "key" | "value";
  readonly found: string;
  /** What to do, where it is not what the catalogue says. */
  readonly mend?: string;
  /** Whether nothing stands where something is expected. */
  readonly isEmpty?: boolean;
}

/** One fault for each issue, and one for each field that is not known. */
export function wordsOf(issue: Issue): IssueWords[] {
  const path = issue.path as (string | number)[];
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownField(key, path, issue));
  if (issue.code === "invalid_key")
    return [{ code: "bad-id", path, end: "key", found: `${nameOf(path)} is not a good id` }];
  if (issue.code === "custom")
    return [{ code: codeOf(issue), path, end: "value", found: `${nameOf(path)} must be ${issue.message}` }];
  const found = inputOf(issue);
  return [found === undefined ? missing(issue, path) : wrong(issue, path, found)];
}

const commaHint = "; inside { } a comma begins a new field, so put text that has commas in quotes";

/** The message of such an issue is the list of known fields. */
function unknownField(key: string, above: YamlPath, issue: Issue): IssueWords {
  const near = / /.test(key) ? commaHint : nearestWords(key, issue.message.split(" "));
  return {
    code: "unknown-field",
    path: [...above, key],
    end: "key",
    found: `"${key}" is not a field here${near}`,
  };
}

const missing = (issue: Issue, path: YamlPath): IssueWords => ({
  code: "missing-field",
  path,
  end: "key",
  found: `the field ${nameOf(path)} is missing; expected ${expected(issue)}`,
});

const wrong = (issue: Issue, path: YamlPath, found: unknown): IssueWords => ({
  code: "wrong-type",
  path,
  end: "value",
  found: `${nameOf(path)} is ${show(found)}`,
  mend: `Write ${expected(issue, found)}.`,
  isEmpty: found === null,
});

function nameOf(path: YamlPath): string {
  const last = path.at(-1);
  if (last === undefined) return "this";
  return typeof last === "number" ? `number ${last + 1} of this list` : `"${last}"`;
}

/** Of a map that tells its kind by a field, it is the field that was looked at. */
function inputOf(issue: Issue): unknown {
  if (issue.code !== "invalid_union" || issue.discriminator === undefined) return issue.input;
  return (issue.input as Record<string, unknown>)[issue.discriminator];
}

function codeOf(issue: z.core.$ZodIssueCustom): Code {
  const code: unknown = issue.params?.code;
  return typeof code === "string" && code in codes ? (code as Code) : "wrong-type";
}

const typeWords = new Map([
  ["string", "text"],
  ["number", "a number"],
  ["int", "a whole number"],
  ["boolean", "true or false"],
  ["array", "a list"],
  ["object", "fields with values"],
  ["record", "ids with values"],
]);

/** Messages that the library made, not the schema. */
const madeByLibrary = /^(?:Invalid|Too|Unrecognized) /;

function expected(issue: Issue, found?: unknown): string {
  if (issue.code === "invalid_value") return oneOf(issue.values, found);
  if ("options" in issue && issue.options !== undefined) return oneOf(issue.options, found);
  if (issue.code === "invalid_type" && madeByLibrary.test(issue.message))
    return typeWords.get(issue.expected) ?? issue.expected;
  return issue.message;
}

function oneOf(values: readonly unknown[], found: unknown): string {
  const words = values.map(String);
  return `one of ${words.join(", ")}${typeof found === "string" ? nearestWords(found, words) : ""}`;
}

function show(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a map of fields";
  return JSON.stringify(value)?.slice(0, 80) ?? typeof value;
}
