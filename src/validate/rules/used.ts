/** What the module declares its steps use, and what its steps use it declares. */
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import { nearest } from "../nearest.ts";
import type { Reporter } from "../reporter.ts";
import { type Known, knownConditions, knownOf } from "./known.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

interface Declared {
  readonly known: (content: Content) => Known;
  readonly field: "tools" | "substances" | "hazards" | "conditions";
  readonly noun: string;
  declared(module: Module): readonly string[];
  path(index: number): YamlPath;
  /** Hazards and conditions may be declared for the module as a whole. */
  readonly mustBeUsed: boolean;
}

const kinds: readonly Declared[] = [
  {
    known: knownOf("tool"),
    field: "tools",
    noun: "tool",
    declared: (m) => m.tools,
    path: (i) => ["tools", i],
    mustBeUsed: true,
  },
  {
    known: knownOf("substance"),
    field: "substances",
    noun: "substance",
    declared: (m) => m.substances.map(({ use }) => use),
    path: (i) => ["substances", i, "use"],
    mustBeUsed: true,
  },
  {
    known: knownOf("hazard"),
    field: "hazards",
    noun: "hazard",
    declared: (m) => m.hazards,
    path: (i) => ["hazards", i],
    mustBeUsed: false,
  },
  {
    known: knownConditions,
    field: "conditions",
    noun: "condition",
    declared: (m) => m.conditions,
    path: (i) => ["conditions", i],
    mustBeUsed: false,
  },
];

export const used = moduleRule("declared and used", (module, content, reporter) => {
  for (const kind of kinds) {
    checkUses(kind, module, content, reporter);
    if (kind.mustBeUsed && module.procedure.steps.length > 0) checkDeclared(kind, module, content, reporter);
  }
});

function checkUses(kind: Declared, module: Module, content: Content, reporter: Reporter): void {
  const meant = meantIn(kind, content);
  const declared = new Set(kind.declared(module).map(meant));
  for (const step of module.procedure.steps) {
    for (const [index, id] of step[kind.field].entries()) {
      if (declared.has(meant(id)) || !kind.known(content).has(id)) continue;
      const spot = inStep(content, module, step, [kind.field, index]);
      reporter.report(
        "undeclared-use",
        spot,
        `this step uses the ${kind.noun} "${id}", which ${kind.field}: of the module does not list`,
      );
    }
  }
}

function checkDeclared(kind: Declared, module: Module, content: Content, reporter: Reporter): void {
  const meant = meantIn(kind, content);
  const usedIds = new Set(module.procedure.steps.flatMap((step: ModuleStep) => step[kind.field]).map(meant));
  for (const [index, id] of kind.declared(module).entries()) {
    if (usedIds.has(meant(id)) || !kind.known(content).has(id)) continue;
    reporter.report(
      "unused-declaration",
      inFile(content, module, kind.path(index)),
      `no step uses the ${kind.noun} "${id}"`,
    );
  }
}

/** A name that is not known is reported as such, and stands here for the nearest that is. */
function meantIn(kind: Declared, content: Content): (id: string) => string {
  const known = kind.known(content);
  return (id) => (known.has(id) ? id : (nearest(id, known.keys()) ?? id));
}
