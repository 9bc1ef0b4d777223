/** A module that begins from another one lists what it is handed, and its states start as the other one's end. */
import type { Content } from "../../model/content.ts";
import { modulePath } from "../../model/link.ts";
import type { Module } from "../../model/module.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, moduleRule } from "./rule.ts";

export const begins = moduleRule("begins and hands on", (module, content, reporter) => {
  checkBeginning(module, content, reporter);
  for (const [thing, { to }] of module.procedure.leaves) {
    const next = to === undefined ? undefined : content.outlines.get(modulePath(to))?.handover;
    if (next === undefined || next.beginsFrom === module.id) continue;
    const from = next.beginsFrom === undefined ? "begins from no other" : `begins from "${next.beginsFrom}"`;
    const spot = inFile(content, module, ["leaves", thing, "to"]);
    reporter.report("handed-nowhere", spot, `"${thing}" is handed on to "${to}", which ${from}`);
  }
});

function checkBeginning(module: Module, content: Content, reporter: Reporter): void {
  const { id, beginsFrom } = module;
  if (beginsFrom === undefined || beginsFrom === id) return;
  const before = content.outlines.get(modulePath(beginsFrom))?.handover;
  const { parts, fasteners, states } = module.procedure;
  for (const [thing, to] of before?.onward ?? []) {
    if (to !== id || parts.has(thing) || fasteners.has(thing)) continue;
    const spot = inFile(content, module, ["begins-from"]);
    reporter.report("handed-on", spot, `"${beginsFrom}" hands "${thing}" on, which is not listed here`);
  }
  for (const [state, ends] of before?.states ?? []) {
    const own = states.get(state);
    if (own === undefined || own.starts === ends) continue;
    const spot = inFile(content, module, ["state", state, "starts"]);
    reporter.report(
      "begins-otherwise",
      spot,
      `the ${own.name} starts "${own.starts}" here, and "${beginsFrom}" leaves it "${ends}"`,
    );
  }
}
