/** Work is left only where nothing is wet, and nothing in a state in which the module says it must never be left. */
import { type Dampness, type NeverLeft, type Unsafe, unsafeAfter } from "../../engine/procedure/leaving.ts";
import { walkOfProcedure } from "../../engine/procedure/walk-of-procedure.ts";
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { calledIn } from "./called.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";
import { treatmentsIn } from "./treatments.ts";

export const stops = moduleRule("stops", (module, content, reporter) => {
  const { steps, neverLeft } = module.procedure;
  if (!steps.some(({ stop }) => stop) && saysNothing(neverLeft)) return;
  const { trays } = walkOfProcedure(module.procedure);
  const unsafe = unsafeAfter(module.procedure, steps, trays, neverLeft, dampnessIn(content));
  const told = new Set<string>();
  for (const [index, step] of steps.entries()) {
    const fresh = step.stop ? unsafe[index]!.filter((one) => isFresh(one, told)) : [];
    if (fresh.length > 0) reportStop(step, fresh, module, content, reporter);
  }
  if (steps.at(-1)?.stop === false) reportEnd(unsafe.at(-1)!, module, content, reporter);
});

const saysNothing = ({ parts, fasteners, states }: NeverLeft): boolean =>
  parts.size === 0 && [...fasteners.values(), ...states.values()].every((ways) => ways.length === 0);

/** What stays wet is told at the first stop only: it is one fault, however often one stops after it. */
function isFresh(unsafe: Unsafe, told: Set<string>): boolean {
  if (unsafe.kind !== "wet") return true;
  const key = `${unsafe.target} ${unsafe.since}`;
  if (told.has(key)) return false;
  told.add(key);
  return true;
}

/** A step wets what it works on with a cleaning substance, unless it is one that dries, or the step says that it dries. */
function dampnessIn(content: Content): (step: ModuleStep) => Dampness {
  const treatmentOf = treatmentsIn(content);
  return (step) => {
    const { cleans, dries } = treatmentOf(step);
    return dries ? "dries" : cleans ? "wets" : undefined;
  };
}

function reportStop(
  step: ModuleStep,
  unsafe: readonly Unsafe[],
  module: Module,
  content: Content,
  reporter: Reporter,
): void {
  const found = [...unsafe.filter(isNotWet).map((one) => unsafeWords(one, module)), ...wetWords(unsafe)].join(
    "; ",
  );
  reporter.report(
    "unsafe-stop",
    inStep(content, module, step, ["stop"], "key"),
    `not safe to stop here: ${found}`,
  );
}

/** Nobody stays with the machine after the last step either. What is wet then dries. */
function reportEnd(unsafe: readonly Unsafe[], module: Module, content: Content, reporter: Reporter): void {
  for (const one of unsafe) {
    if (!isNotWet(one)) continue;
    const spot = inFile(content, module, pathOf(one), "key");
    reporter.report("unsafe-stop", spot, `at the end, ${unsafeWords(one, module)}`);
  }
}

type NotWet = Exclude<Unsafe, { kind: "wet" }>;

const isNotWet = (unsafe: Unsafe): unsafe is NotWet => unsafe.kind !== "wet";

/** For each step that wetted something: "nothing has dried "plate", "plate-screws" since "clean-plate"". */
function wetWords(unsafe: readonly Unsafe[]): string[] {
  const bySince = new Map<string, string[]>();
  for (const one of unsafe) {
    if (one.kind !== "wet") continue;
    bySince.set(one.since, [...(bySince.get(one.since) ?? []), `"${one.target}"`]);
  }
  return [...bySince].map(([since, targets]) => `nothing has dried ${targets.join(", ")} since "${since}"`);
}

function pathOf(unsafe: NotWet): YamlPath {
  if (unsafe.kind === "state") return ["state", unsafe.state, "never-left"];
  if (unsafe.kind === "open") return ["parts", unsafe.part, "never-left"];
  return ["fasteners", unsafe.set, "never-left"];
}

function unsafeWords(unsafe: NotWet, module: Module): string {
  const { name, is } = calledIn(module);
  const { states } = module.procedure;
  switch (unsafe.kind) {
    case "state":
      return `the ${states.get(unsafe.state)?.name ?? unsafe.state} must never be left "${unsafe.value}"`;
    case "open":
      return `${name(unsafe.part)} ${is(unsafe.part)} off, and must never be left off`;
    case "loose":
      return `of ${name(unsafe.set)}, ${unsafe.count} ${unsafe.count === 1 ? "is" : "are"} ${unsafe.how}, and must never be left so`;
  }
}
