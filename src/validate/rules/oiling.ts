/** Oil goes on what is clean and dry, stays there, and never comes on what is kept dry. */
import { type OilFault, oilFaults } from "../../engine/procedure/oiling.ts";
import type { Code } from "../../model/codes.ts";
import type { Module } from "../../model/module.ts";
import { calledIn } from "./called.ts";
import { inStep, moduleRule } from "./rule.ts";
import { treatmentsIn } from "./treatments.ts";

const codeOf: Readonly<Record<OilFault["kind"], Code>> = {
  "washed-off": "oil-washed-off",
  "on-wet": "oil-on-wet",
  "kept-dry": "kept-dry",
};

export const oiling = moduleRule("oiling", (module, content, reporter) => {
  const { parts, steps } = module.procedure;
  const keepDry = new Set([...parts.values()].flatMap(({ id, keepDry: isDry }) => (isDry ? [id] : [])));
  for (const fault of oilFaults(steps, treatmentsIn(content), keepDry)) {
    const step = steps.find(({ id }) => id === fault.step)!;
    const other = "cleaned" in fault ? steps.find(({ id }) => id === fault.cleaned) : undefined;
    reporter.report(
      codeOf[fault.kind],
      inStep(content, module, step, ["substances"]),
      words(fault, module),
      other && { ...inStep(content, module, other, ["substances"]), message: "this is the cleaning" },
    );
  }
});

function words(fault: OilFault, module: Module): string {
  const { name, is, agree } = calledIn(module);
  const { target } = fault;
  const thing = `${name(target)} ${is(target)}`;
  const it = agree(target, "it", "them");
  switch (fault.kind) {
    case "washed-off":
      return `${thing} lubricated here for the last time, and "${fault.cleaned}" cleans ${it} afterwards`;
    case "on-wet":
      return `${thing} lubricated here, and nothing has dried ${it} since "${fault.cleaned}" cleaned ${it}`;
    case "kept-dry":
      return `${thing} to be kept dry; this step brings oil on ${it}, and no later step cleans and dries ${it}`;
  }
}
