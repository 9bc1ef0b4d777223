/** Reads a precedence graph from a JSON file: `{"steps": ["a", "b"], "before": [["a", "b"]]}`. */
import { readFileSync, statSync } from "node:fs";
import { checkPrecedence, type PrecedenceProblem } from "../engine/procedure/check-precedence.ts";
import type { Pair, Precedence } from "../engine/procedure/precedence.ts";
import { BadInput } from "./command.ts";

const sizeLimit = 20 * 1024 * 1024;

/** Throws a BadInput that lists everything wrong with the file. */
export function readGraphFile(file: string): Precedence {
  return soundPrecedence(readJson(file), file);
}

/** The precedence graph in the value that `file` holds, free of faults. Throws a BadInput that lists them. */
export function soundPrecedence(value: unknown, file: string): Precedence {
  const precedence = graphFrom(value, file);
  const problems = checkPrecedence(precedence).filter(({ kind }) => kind !== "duplicate-pair");
  if (problems.length > 0)
    throw new BadInput(
      problems
        .slice(0, 20)
        .map((problem) => `${file}: ${problemWords(problem)}`)
        .join("\n"),
    );
  return precedence;
}

export function readJson(file: string): unknown {
  let text: string;
  try {
    if (statSync(file).size > sizeLimit) throw new BadInput(`${file}: larger than ${sizeLimit} bytes`);
    text = readFileSync(file, "utf8");
  } catch (cause) {
    if (cause instanceof BadInput) throw cause;
    throw new BadInput(`${file}: can't be read (${cause instanceof Error ? cause.message : String(cause)})`);
  }
  return parseJson(text, file);
}

/** Throws a BadInput for text that is no JSON; `file` is where it stood. */
export function parseJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (cause) {
    throw new BadInput(`${file}: is not JSON (${cause instanceof Error ? cause.message : String(cause)})`);
  }
}

function graphFrom(value: unknown, file: string): Precedence {
  const { steps, before } = (typeof value === "object" && value !== null ? value : {}) as {
    steps?: unknown;
    before?: unknown;
  };
  if (!Array.isArray(steps) || !steps.every((step) => typeof step === "string")) {
    throw new BadInput(
      `${file}: "steps" must be a list of texts, as in {"steps": ["a", "b"], "before": [["a", "b"]]}`,
    );
  }
  if (steps.length === 0) throw new BadInput(`${file}: "steps" is empty; a graph needs at least one step`);
  if (!Array.isArray(before))
    throw new BadInput(`${file}: "before" must be a list of pairs such as ["a", "b"]`);
  return { steps: steps as string[], pairs: before.map((pair, index) => pairFrom(pair, index, file)) };
}

function pairFrom(value: unknown, index: number, file: string): Pair {
  if (Array.isArray(value) && value.length === 2 && value.every((step) => typeof step === "string")) {
    return { first: value[0] as string, then: value[1] as string, because: [], critical: false };
  }
  const { first, then, because, critical } = (
    typeof value === "object" && value !== null ? value : {}
  ) as Record<string, unknown>;
  const sound =
    typeof first === "string" &&
    typeof then === "string" &&
    (because === undefined || typeof because === "string") &&
    (critical === undefined || typeof critical === "boolean");
  if (!sound)
    throw new BadInput(
      `${file}: pair ${index + 1} of "before" must be ["a", "b"] or {"first": "a", "then": "b", "because": "…", "critical": true}`,
    );
  return { first, then, because: because === undefined ? [] : [because], critical: critical ?? false };
}

function problemWords(problem: PrecedenceProblem): string {
  switch (problem.kind) {
    case "too-many-steps":
      return `the graph has ${problem.count} steps; the limit is ${problem.limit}`;
    case "duplicate-step":
      return `the step "${problem.step}" is listed twice, as number ${problem.earlier + 1} and ${problem.at + 1}`;
    case "unknown-step":
      return `pair ${problem.pair + 1} names "${problem.step}", which "steps" does not list`;
    case "self-pair":
      return `pair ${problem.pair + 1} puts "${problem.step}" before itself`;
    case "duplicate-pair":
      return `pair ${problem.pair + 1} repeats pair ${problem.earlier + 1}, "${problem.first}" before "${problem.then}"`;
    case "cycle":
      return `steps come before themselves: ${circleWords(problem.steps)}`;
  }
}

/** A circle too long to be read is told by its beginning, its end and its length. */
function circleWords(steps: readonly string[]): string {
  const circle = [...steps, steps[0]];
  if (circle.length <= 12) return circle.join(" → ");
  return `${[...circle.slice(0, 5), "…", ...circle.slice(-3)].join(" → ")} (${steps.length} steps)`;
}
