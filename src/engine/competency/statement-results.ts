/** Level, score and outcome of a statement as results of Open Badges 3.0. */
import { at, isList, textAt } from "./fields.ts";
import type { Json, JsonObject } from "./json.ts";
import { levels, type Outcome, outcomes } from "./levels.ts";
import type { Statement } from "./sign-off.ts";

const statusOf: Readonly<Record<Outcome, string>> = {
  watched: "Provisional",
  unaided: "Completed",
  "not yet": "InProgress",
  "stopped for safety": "Failed",
};

type ResultName = "level" | "score" | "outcome";

interface Row {
  readonly name: ResultName;
  readonly description: JsonObject;
  /** Undefined where the statement has no such result. */
  of(statement: Statement): JsonObject | undefined;
}

const rows: readonly Row[] = [
  {
    name: "level",
    description: { name: "Level", resultType: "PerformanceLevel", allowedValue: levels },
    of: (statement) => (statement.kind === "sign-off" ? { value: statement.level } : undefined),
  },
  {
    name: "score",
    description: { name: "Quiz score", resultType: "Percent", valueMin: "0", valueMax: "100" },
    of: (statement) =>
      statement.kind === "sign-off" && statement.score !== undefined
        ? { value: percentOf(statement.score) }
        : undefined,
  },
  {
    name: "outcome",
    description: { name: "Outcome", resultType: "Status" },
    of: (statement) =>
      statement.kind === "observation" ? { status: statusOf[statement.outcome] } : undefined,
  },
];

/** To a hundredth of a percent. */
const percentOf = (fraction: number): string => String(Math.round(fraction * 10_000) / 100);

const rowsOf = (statement: Statement): readonly Row[] =>
  rows.filter((row) => row.of(statement) !== undefined);

/** What the results of the statement are measured by. `achievement` is the address that their ids begin with. */
export const resultDescriptions = (statement: Statement, achievement: string): readonly JsonObject[] =>
  rowsOf(statement).map(({ name, description }) => ({
    id: `${achievement}#${name}`,
    type: ["ResultDescription"],
    ...description,
  }));

export const resultsOf = (statement: Statement, achievement: string): readonly JsonObject[] =>
  rowsOf(statement).map((row) => ({
    type: ["Result"],
    resultDescription: `${achievement}#${row.name}`,
    ...row.of(statement),
  }));

/** The level of a credential as it is written there; empty where there is none. */
export const levelIn = (credential: Json): string => textAt(resultIn(credential, "level"), "value") ?? "";

/** A fraction; undefined where there is no score, NaN where it is none. */
export function scoreIn(credential: Json): number | undefined {
  const result = resultIn(credential, "score");
  if (result === undefined) return undefined;
  const text = textAt(result, "value") ?? "";
  return /^(?:100|\d{1,2}(?:\.\d{1,2})?)$/.test(text) ? Math.round(Number(text) * 100) / 10_000 : Number.NaN;
}

/** Undefined where there is none that is known. */
export const outcomeIn = (credential: Json): Outcome | undefined =>
  outcomes.find((outcome) => statusOf[outcome] === textAt(resultIn(credential, "outcome"), "status"));

function resultIn(credential: Json, name: ResultName): Json | undefined {
  const results = at(credential, "credentialSubject", "result");
  if (!isList(results)) return undefined;
  return results.find((result) => textAt(result, "resultDescription")?.endsWith(`#${name}`));
}
