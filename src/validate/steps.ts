/** The steps of a module: one block under a heading of its own. */
import type { ModuleStep } from "../model/module.ts";
import type { OtherBlock, Source } from "../model/source.ts";
import { looksLikeStep } from "./looks-like-step.ts";
import { makeStep } from "./make/step.ts";
import { parseWith } from "./parse.ts";
import type { Reporter } from "./reporter.ts";
import { step as stepSchema } from "./schema/step.ts";

/** Derived precedence compares every pair of steps; a procedure of this many is hours of work for a reader already. */
export const stepLimit = 500;

/** All steps, or undefined where one of them is faulty, so that faults of the whole are not made up from half of it. */
export function parseSteps(source: Source, reporter: Reporter): ModuleStep[] | undefined {
  const blocks = source.sections.reduce((sum, section) => sum + section.steps.length, 0);
  if (blocks > stepLimit) {
    reporter.report(
      "too-many-steps",
      { source, offset: 0 },
      `the module has ${blocks} steps; the limit is ${stepLimit}`,
    );
    return undefined;
  }
  const unmarked = source.otherBlocks.filter(looksLikeStep);
  for (const block of unmarked) reportUnmarked(source, block, reporter);
  const steps: ModuleStep[] = [];
  for (const section of source.sections) {
    for (const [index, yaml] of section.steps.entries()) {
      if (section.level === 0 || index > 0) reportHeading(source, section.level, yaml.offset, reporter);
      const data = parseWith(stepSchema, source, yaml, reporter);
      if (data !== undefined) steps.push(makeStep(source, section, data));
    }
  }
  const wellPlaced = source.sections.every(({ level, steps: own }) => own.length <= (level === 0 ? 0 : 1));
  return steps.length === blocks && wellPlaced && unmarked.length === 0 ? steps : undefined;
}

function reportUnmarked(source: Source, { isInner, offset }: OtherBlock, reporter: Reporter): void {
  const [found, mend] = isInner
    ? [
        "this block looks like a step, and stands in a list or quotation or is indented",
        "Begin its lines at the margin.",
      ]
    : ["this block looks like a step, and is not marked as one", undefined];
  reporter.report("step-unmarked", { source, offset }, found, undefined, mend);
}

function reportHeading(source: Source, level: number, offset: number, reporter: Reporter): void {
  const found =
    level === 0
      ? "this step block stands before any heading"
      : "this is the second step block under one heading";
  reporter.report("step-without-heading", { source, offset }, found);
}
