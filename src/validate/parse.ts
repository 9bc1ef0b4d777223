/** Reads untrusted YAML through a schema and turns what the schema finds into diagnostics. */
import type { z } from "zod";
import type { Source, Yaml, YamlPath } from "../model/source.ts";
import { type Issue, type IssueWords, wordsOf } from "./issue-words.ts";
import type { Reporter } from "./reporter.ts";

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
  for (const issue of result.error.issues.flatMap((one) => unfold(one, []))) {
    for (const words of wordsOf(issue)) report(afterComment(words, source, yaml), source, yaml, reporter);
  }
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

const depth = (issues: readonly Issue[]): number => Math.max(...issues.map((issue) => issue.path.length));

function report(words: IssueWords, source: Source, yaml: Yaml, reporter: Reporter): void {
  const { code, path, end, found, mend } = words;
  reporter.report(code, { source, yaml, path, end }, found, undefined, mend);
}

/** A value that is empty only because what was written begins with #. */
function afterComment(words: IssueWords, source: Source, yaml: Yaml): IssueWords {
  if (!words.isEmpty) return words;
  const line = /^[^\r\n]*/.exec(source.text.slice(yaml.locate(words.path, "key")))![0];
  const comment = /^[^#]*?[:-]\s+(#\S.*)$/.exec(line)?.[1]?.trim();
  if (comment === undefined) return words;
  return {
    ...words,
    found: `${words.found}: # begins a comment`,
    mend: `Put the text in quotes: "${comment.slice(0, 60)}".`,
  };
}
