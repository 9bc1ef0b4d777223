/** Reads untrusted YAML through a schema and turns what the schema finds into diagnostics. */
import type { z } from "zod";
import { type Code, codes } from "../model/codes.ts";
import type { Source, Yaml, YamlPath } from "../model/source.ts";
import { nearestWords } from "./nearest.ts";
import type { Reporter } from "./reporter.ts";

type Issue = z.core.$ZodIssue;

/** The typed value, or undefined after every fault has been reported; YAML that is broken has been reported by the reader. */
export function parseWith<Schema extends z.ZodType>(
  schema: Schema,
  source: Source,
  yaml: Yaml,
  reporter: Reporter,
): z.output<Schema> | undefined {
  if (yaml.value === undefined) return undefined;
  const result = schema.safeParse(yaml.value ?? {}, { reportInput: true });
  if (result.success) return result.data;
  for (const issue of result.error.issues.flatMap((one) => unfold(one, [])))
    reportIssue(issue, source, yaml, reporter);
  return undefined;
}

/** Of a union that nothing fits, the faults of the branch that came furthest, or the union's own words where none went deeper. */
function unfold(issue: Issue, above: YamlPath): Issue[] {
  const path = [...above, ...(issue.path as (string | number)[])];
  if (issue.code === "invalid_union") {
    const branches = issue.errors.map((branch) => branch.flatMap((inner) => unfold(inner, path)));
    const deeper = branches.filter((branch) => branch.some((inner) => inner.path.length > path.length));
    if (deeper.length > 0) return deeper.sort((a, b) => depth(b) - depth(a))[0]!;
  }
  return [{ ...issue, path } as Issue];
}

const commaHint = "; inside { } a comma begins a new field, so put text that has commas in quotes";

const depth = (issues: readonly Issue[]): number => Math.max(...issues.map((issue) => issue.path.length));

function reportIssue(issue: Issue, source: Source, yaml: Yaml, reporter: Reporter): void {
  const path = issue.path as (string | number)[];
  const name = path.length === 0 ? "this" : `"${path.at(-1)}"`;
  if (issue.code === "unrecognized_keys") {
    for (const key of issue.keys) {
      const near = / /.test(key) ? commaHint : nearestWords(key, issue.message.split(" "));
      reporter.report(
        "unknown-field",
        { source, yaml, path: [...path, key], end: "key" },
        `"${key}" is not a field here${near}`,
      );
    }
  } else if (issue.input === undefined && issue.code !== "custom") {
    reporter.report(
      "missing-field",
      { source, yaml, path, end: "key" },
      `the field ${name} is missing; expected ${expected(issue)}`,
    );
  } else {
    const found =
      issue.code === "custom"
        ? `${name} must be ${issue.message}`
        : `${name} is ${show(issue.input)}; expected ${expected(issue)}`;
    reporter.report(
      codeOf(issue),
      { source, yaml, path, end: issue.code === "invalid_key" ? "key" : "value" },
      found,
    );
  }
}

function codeOf(issue: Issue): Code {
  if (issue.code === "invalid_key") return "bad-id";
  const code: unknown = issue.code === "custom" ? issue.params?.code : undefined;
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

function expected(issue: Issue): string {
  if (issue.code === "invalid_type") return typeWords.get(issue.expected) ?? issue.expected;
  if (issue.code === "invalid_value") return `one of ${issue.values.map(String).join(", ")}`;
  if (issue.code === "invalid_key") return "an id of lower-case letters, digits and hyphens";
  return issue.message;
}

function show(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a map of fields";
  return JSON.stringify(value)?.slice(0, 80) ?? typeof value;
}
