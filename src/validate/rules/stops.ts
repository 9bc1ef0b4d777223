/** Work is left only where nothing is wet, and nothing in a state in which the module says it must never be left. */
import { type Dampness, type NeverLeft, type Unsafe, unsafeAfter } from "../../engine/procedure/leaving.ts";
import { walkOfProcedure } from "../../engine/procedure/walk-of-procedure.ts";
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const stops = moduleRule("stops", (module, content, reporter) => {
  const { steps, neverLeft } = module.procedure;
  if (!steps.some(({ stop }) => stop) && saysNothing(neverLeft)) return;
  const { trays } = walkOfProcedure(module.procedure);
  const unsafe = unsafeAfter(module.procedure, steps, trays, neverLeft, dampnessIn(content));
  for (const [index, step] of steps.entries()) {
    if (step.stop && unsafe[index]!.length > 0) reportStop(step, unsafe[index]!, module, content, reporter);
  }
  if (steps.at(-1)?.stop === false) reportEnd(unsafe.at(-1)!, module, content, reporter);
});

const saysNothing = ({ parts, fasteners, states }: NeverLeft): boolean =>
  parts.size === 0 && [...fasteners.values(), ...states.values()].every((ways) => ways.length === 0);

/** A step wets what it works on with a cleaning substance, unless it is one that dries, or the step says that it dries. */
function dampnessIn({ substances }: Content): (step: ModuleStep) => Dampness {
  return (step) => {
    const uses = new Set(step.substances.flatMap((id) => substances.get(id)?.uses ?? []));
    if (step.dries || uses.has("drying")) return "dries";
    return uses.has("cleaning") ? "wets" : undefined;
  };
}

function reportStop(
  step: ModuleStep,
  unsafe: readonly Unsafe[],
  module: Module,
  content: Content,
  reporter: Reporter,
): void {
  const found = unsafe.map((one) => unsafeWords(one, module)).join("; ");
  reporter.report(
    "unsafe-stop",
    inStep(content, module, step, ["stop"], "key"),
    `not safe to stop here: ${found}`,
  );
}

/** Nobody stays with the machine after the last step either. What is wet then dries. */
function reportEnd(unsafe: readonly Unsafe[], module: Module, content: Content, reporter: Reporter): void {
  for (const one of unsafe) {
    if (one.kind === "wet") continue;
    const spot = inFile(content, module, pathOf(one), "key");
    reporter.report("unsafe-stop", spot, `at the end, ${unsafeWords(one, module)}`);
  }
}

function pathOf(unsafe: Exclude<Unsafe, { kind: "wet" }>): YamlPath {
  if (unsafe.kind === "state") return ["state", unsafe.state, "never-left"];
  if (unsafe.kind === "open") return ["parts", unsafe.part, "never-left"];
  return ["fasteners", unsafe.set, "never-left"];
}

function unsafeWords(unsafe: Unsafe, { procedure: { parts, fasteners, states } }: Module): string {
  const name = (id: string): string => `"${id}" (${parts.get(id)?.name ?? fasteners.get(id)?.name ?? id})`;
  switch (unsafe.kind) {
    case "state":
      return `the ${states.get(unsafe.state)?.name ?? unsafe.state} is "${unsafe.value}", and must never be left so`;
    case "open":
      return `${name(unsafe.part)} is off, and must never be left off`;
    case "loose":
      return `of ${name(unsafe.set)}, ${unsafe.count} ${unsafe.count === 1 ? "is" : "are"} ${unsafe.how}, and must never be left so`;
    case "wet":
      return `nothing has dried ${name(unsafe.target)} since "${unsafe.since}" wetted it`;
  }
}
