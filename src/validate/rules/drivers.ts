/** What is turned must be turned by something: a tool that the module declares fits each drive. */
import type { ActKind } from "../../engine/procedure/procedure.ts";
import type { Module } from "../../model/module.ts";
import { inFile, moduleRule } from "./rule.ts";

/** Turned by fingers. */
const byHand = /^(knurled|wing|finger|none)/;
const turning: ReadonlySet<ActKind> = new Set<ActKind>(["slacken", "remove", "tighten"]);

export const drivers = moduleRule("drivers", (module, content, reporter) => {
  const tools = module.tools.map((id) => content.tools.get(id));
  // A tool that is misnamed or could not be understood may be the one.
  if (tools.includes(undefined)) return;
  const declared = tools.flatMap((tool) => tool?.drives ?? []);
  const fits = new Set(declared.map(kindOf));
  for (const { id, drive } of module.procedure.fasteners.values()) {
    if (drive === undefined || byHand.test(drive) || fits.has(kindOf(drive)) || !isTurned(id, module))
      continue;
    reporter.report(
      "no-driver",
      inFile(content, module, ["fasteners", id, "drive"]),
      `"${id}" is ${drive}, and none of the tools: of this module has that drive`,
    );
  }
});

/** "slotted, 5 mm slot" is slotted. */
const kindOf = (drive: string): string => drive.split(",")[0]!.trim().toLowerCase();

const isTurned = (set: string, { procedure }: Module): boolean =>
  procedure.steps.some(({ acts }) => acts.some(({ kind, target }) => target === set && turning.has(kind)));
