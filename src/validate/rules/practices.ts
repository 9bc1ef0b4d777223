/** Practices that the author chose ask for at least two steps of the module, and mix in only others. */
import type { Content } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import { type ChosenPractice, practiceSteps } from "../../model/practice.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { reportUnknown } from "./references.ts";
import { inFile, moduleRule } from "./rule.ts";

export const practices = moduleRule("practices", (module, content, reporter) => {
  const ids = new Map<string, number>();
  for (const [index, practice] of (module.practices ?? []).entries()) {
    const at = (...path: YamlPath): Spot => inFile(content, module, ["practices", index, ...path]);
    checkNames(practice, module, at, reporter);
    checkSteps(practice, module, index, at, reporter);
    const before = ids.get(practice.id);
    if (before === undefined) ids.set(practice.id, index);
    else reportRepeated(practice.id, module, content, [before, index], reporter);
  }
});

type At = (...path: YamlPath) => Spot;

function checkNames({ phase, steps, mixedIn }: ChosenPractice, module: Module, at: At, reporter: Reporter) {
  if (phase !== undefined)
    reportUnknown("unknown-phase", "phase", phase, module.phases, at("phase"), reporter);
  const known = new Map(module.procedure.steps.map(({ id }) => [id, id]));
  for (const [index, step] of (steps ?? []).entries())
    reportUnknown("unknown-step", "step", step, known, at("steps", index), reporter);
  for (const [index, step] of mixedIn.entries())
    reportUnknown("unknown-step", "step", step, known, at("mixed-in", index), reporter);
}

function checkSteps(
  { phase, steps, mixedIn }: ChosenPractice,
  module: Module,
  index: number,
  at: At,
  reporter: Reporter,
): void {
  const report = (spot: Spot, found: string): void => reporter.report("practice-steps", spot, found);
  if (phase !== undefined && steps !== undefined) report(at("steps"), "it has both phase: and steps:");
  if (phase === undefined && steps === undefined) report(at(), "it has neither phase: nor steps:");
  if ((phase === undefined) === (steps === undefined)) return;
  const asked = practiceSteps(module)[index]!.steps;
  const seen = new Set(asked);
  if (seen.size < 2 && (phase === undefined || module.phases.has(phase)))
    report(at(phase === undefined ? "steps" : "phase"), `it asks for ${seen.size} of the steps`);
  for (const [place, step] of asked.entries())
    if (asked.indexOf(step) < place) report(at("steps", place), `"${step}" is asked for twice`);
  for (const [place, step] of mixedIn.entries()) {
    if (seen.has(step)) report(at("mixed-in", place), `"${step}" is asked for or mixed in already`);
    seen.add(step);
  }
}

function reportRepeated(
  id: string,
  module: Module,
  content: Content,
  [before, index]: readonly [number, number],
  reporter: Reporter,
): void {
  const at = (place: number): Spot => inFile(content, module, ["practices", place, "id"]);
  const other = { ...at(before), message: "the first one stands here" };
  reporter.report("duplicate-id", at(index), `there is a practice "${id}" already`, other);
}
