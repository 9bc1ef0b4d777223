/** Files that the tool itself has written: they must be what they were. */
import { digestOfText } from "../engine/competency/digest.ts";
import type { JsonObject } from "../engine/competency/json.ts";
import { portable } from "../engine/competency/libraries.ts";
import type { Release } from "../engine/competency/release.ts";
import { readJson } from "../engine/competency/strict-json.ts";
import type { KeptRelease, Withdrawals } from "../model/released.ts";
import type { Source } from "../model/source.ts";
import type { Reporter } from "./reporter.ts";

/** The digest in the name is that of the text: what has been changed since would mark old answers wrongly. */
export function parseKeptRelease(source: Source, reporter: Reporter): KeptRelease | undefined {
  const { path, id } = source;
  const text = source.text.trimEnd();
  const [, revision, digest] = /\/([1-9]\d*)-(u[\w-]+)\.json$/.exec(path)!;
  const found = digestOfText(text, portable);
  const release = found === digest ? parsed(text) : undefined;
  if (release?.module === id && String(release.revision) === revision) return { path, release, text };
  const words =
    release === undefined
      ? `the digest of what it holds is ${found}, not the one in its name`
      : `it is revision ${release.revision} of "${release.module}"`;
  reporter.report("release-altered", { source, offset: 0 }, words);
  return undefined;
}

/** Undefined where it is no JSON; its shape is vouched for by the digest. */
function parsed(text: string): Release | undefined {
  try {
    return JSON.parse(text) as Release;
  } catch {
    return undefined;
  }
}

export function parseWithdrawals(source: Source, reporter: Reporter): Withdrawals | undefined {
  const read = readJson(source.text);
  if (read.ok && isObject(read.value)) return { mentor: source.id, path: source.path, list: read.value };
  const words = read.ok ? "it is no JSON object" : read.problem.message;
  reporter.report("withdrawals-unreadable", { source, offset: 0 }, words.replace(/\.$/, ""));
  return undefined;
}

const isObject = (value: unknown): value is JsonObject =>
  typeof value === "object" && value !== null && !Array.isArray(value);
