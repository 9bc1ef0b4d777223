/** What makers of questions share. */
import type { QuestionKind } from "../../../engine/quiz/kinds.ts";
import type { Module } from "../../../model/module.ts";
import type { Source, YamlPath } from "../../../model/source.ts";
import type { Reporter } from "../../reporter.ts";
import type { QuestionData } from "../../schema/quiz.ts";

export interface Making {
  readonly source: Source;
  readonly module: Module;
  readonly reporter: Reporter;
  readonly index: number;
}

export type DataOf<Kind extends QuestionKind> = Extract<QuestionData, { kind: Kind }>;

export function asked(data: QuestionData) {
  const { id, ask, why, see, objective, critical, points } = data;
  const keepOrder = "keep-order" in data && data["keep-order"] ? { keepOrder: true } : {};
  return { id, ask, why, see, objective, critical, points, ...keepOrder };
}

export function wrongUnit(
  making: Making,
  field: string,
  { found, expected }: { found: string; expected: string },
): undefined {
  report(making, "wrong-unit", [field], `"${field}" reads "${found}"; expected ${expected}`);
}

export function report(
  { source, reporter, index }: Making,
  code: "wrong-unit" | "unknown-step" | "quiz-unknown-group" | "quiz-case",
  path: YamlPath,
  found: string,
): void {
  reporter.report(code, { source, yaml: source.data, path: ["questions", index, ...path] }, found);
}
