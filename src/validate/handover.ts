/** What modules hand on to one another: the closing tray of the one is the starting tray of the other. */
import type { Beginning } from "../engine/procedure/procedure.ts";
import type { Handover, Outline } from "../model/content.ts";
import { modulePath } from "../model/link.ts";
import type { Module } from "../model/module.ts";
import { remembered } from "../model/remembered.ts";

/** As the module declares it; that its steps come to this is for other rules. */
export function handoverOf({
  beginsFrom,
  procedure: { parts, fasteners, leaves, states },
}: Module): Handover {
  const left = [...leaves];
  return {
    beginsFrom,
    leaves: {
      parts: left.flatMap(([id, { out }]) => (parts.has(id) && out > 0 ? [id] : [])),
      sets: left.flatMap(([id, { out, slack }]) =>
        fasteners.has(id) ? [[id, { out, slack }] as const] : [],
      ),
    },
    onward: left.flatMap(([id, { to }]) => (to === undefined ? [] : [[id, to] as const])),
    states: [...states.values()].map(({ id, ends }) => [id, ends] as const),
  };
}

/** The module with what it begins with, where it begins from another one. The same module is given for the same beginning. */
export function begun(module: Module, outlines: ReadonlyMap<string, Outline>): Module {
  const { beginsFrom } = module;
  if (beginsFrom === undefined || beginsFrom === module.id) return module;
  const before = outlines.get(modulePath(beginsFrom))?.handover;
  return before === undefined ? module : withBeginning(module, JSON.stringify(before.leaves));
}

/** `leaves` is a beginning as JSON, so that it is the same key for the same one. */
const withBeginning = remembered((module: Module, leaves: string): Module => {
  const begins = JSON.parse(leaves) as Beginning;
  return { ...module, procedure: { ...module.procedure, begins } };
});
