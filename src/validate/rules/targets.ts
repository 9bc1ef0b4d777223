/** Parts, fastener sets, states and steps that a module's own tables and steps name must be listed in it. */
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { reportUnknown } from "./references.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const targets = moduleRule("targets", (module, content, reporter) => {
  checkParts(module, content, reporter);
  checkStates(module, content, reporter);
  checkLeaves(module, content, reporter);
  for (const step of module.procedure.steps) checkStep(module, step, content, reporter);
});

function checkParts(module: Module, content: Content, reporter: Reporter): void {
  const { parts, fasteners } = module.procedure;
  for (const part of parts.values()) {
    const at = (...path: YamlPath): Spot => inFile(content, module, ["parts", part.id, ...path]);
    for (const set of part.heldBy.keys())
      reportUnknown("unknown-fastener", "fastener set", set, fasteners, at("held-by"), reporter);
    for (const [index, covered] of part.covers.entries())
      checkTarget(module, covered, at("covers", index), reporter);
    for (const [field, id] of [
      ["in", part.in],
      ["replaces", part.replaces],
    ] as const) {
      if (id !== undefined) reportUnknown("unknown-part", "part", id, parts, at(field), reporter);
    }
    for (const [state, value] of part.onlyWhile)
      checkValue(module, state, value, at("only-while", state), reporter);
  }
}

function checkStates(module: Module, content: Content, reporter: Reporter): void {
  for (const state of module.procedure.states.values()) {
    for (const field of ["starts", "ends"] as const) {
      checkValue(
        module,
        state.id,
        state[field],
        inFile(content, module, ["state", state.id, field]),
        reporter,
      );
    }
    for (const value of module.procedure.neverLeft.states.get(state.id) ?? []) {
      checkValue(
        module,
        state.id,
        value,
        inFile(content, module, ["state", state.id, "never-left"]),
        reporter,
      );
    }
  }
}

function checkLeaves(module: Module, content: Content, reporter: Reporter): void {
  for (const id of module.procedure.leaves.keys())
    checkTarget(module, id, inFile(content, module, ["leaves", id], "key"), reporter);
}

function checkStep(module: Module, step: ModuleStep, content: Content, reporter: Reporter): void {
  const { parts, steps } = module.procedure;
  const at = (...path: YamlPath): Spot => inStep(content, module, step, path);
  for (const { kind, target } of step.acts) checkTarget(module, target, at(kind, target), reporter);
  for (const [index, cover] of step.through.entries())
    reportUnknown("unknown-part", "part", cover, parts, at("through", index), reporter);
  for (const [state, value] of step.while) checkValue(module, state, value, at("while", state), reporter);
  for (const [state, value] of step.makes) checkValue(module, state, value, at("makes", state), reporter);
  const known = new Map(steps.map(({ id }) => [id, id]));
  for (const other of step.maySwap.keys())
    reportUnknown("unknown-step", "step", other, known, at("may-swap", other), reporter);
  if (step.recordFor !== undefined)
    reportUnknown("unknown-step", "step", step.recordFor, known, at("record-for"), reporter);
}

function checkTarget(module: Module, id: string, spot: Spot, reporter: Reporter): void {
  const { parts, fasteners } = module.procedure;
  if (parts.has(id) || fasteners.has(id)) return;
  reporter.report(
    "unknown-target",
    spot,
    `"${id}" is neither a part nor a fastener set of this module${nearestWords(id, [...parts.keys(), ...fasteners.keys()])}`,
  );
}

function checkValue(module: Module, state: string, value: string, spot: Spot, reporter: Reporter): void {
  const { states } = module.procedure;
  const known = states.get(state);
  reportUnknown("unknown-state", "state", state, states, { ...spot, end: "key" }, reporter);
  if (known === undefined || known.values.includes(value)) return;
  reporter.report(
    "unknown-value",
    spot,
    `the ${known.name} can't be "${value}"; expected one of ${known.values.join(", ")}`,
  );
}
