/** Names of tools, substances, hazards, modules, conditions and phases must exist. */
import type { Code } from "../../model/codes.ts";
import { type Content, sheetsOf } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { type Known, knownConditions, knownOf } from "./known.ts";
import { inFile, inStep, type Rule } from "./rule.ts";

interface Reference {
  readonly id: string;
  readonly path: YamlPath;
}

interface ReferenceKind {
  readonly code: Code;
  readonly noun: string;
  known(content: Content, module: Module): Known;
  ofModule(module: Module): readonly Reference[];
  ofStep(step: ModuleStep): readonly Reference[];
}

const list = (field: string, ids: readonly string[]): Reference[] =>
  ids.map((id, index) => ({ id, path: [field, index] }));
const none = (): Reference[] => [];

const knownHazards = knownOf("hazard");

const kinds: readonly ReferenceKind[] = [
  {
    code: "unknown-tool",
    noun: "tool",
    known: knownOf("tool"),
    ofModule: (module) => list("tools", module.tools),
    ofStep: (step) => list("tools", step.tools),
  },
  {
    code: "unknown-substance",
    noun: "substance",
    known: knownOf("substance"),
    ofModule: (module) =>
      module.substances.map(({ use }, index) => ({ id: use, path: ["substances", index, "use"] })),
    ofStep: (step) => list("substances", step.substances),
  },
  {
    code: "unknown-hazard",
    noun: "hazard",
    known: knownHazards,
    ofModule: (module) => list("hazards", module.hazards),
    ofStep: (step) => list("hazards", step.hazards),
  },
  {
    code: "unknown-condition",
    noun: "condition",
    known: knownConditions,
    ofModule: (module) => list("conditions", module.conditions),
    ofStep: (step) => list("conditions", step.conditions),
  },
  {
    code: "unknown-module",
    noun: "module",
    known: knownOf("module"),
    ofModule: (module) => [...list("needs", module.needs), ...before(module), ...onward(module)],
    ofStep: none,
  },
  {
    code: "unknown-phase",
    noun: "phase",
    known: (_, module) => module.phases,
    ofModule: none,
    ofStep: (step) => (step.phase === undefined ? [] : [{ id: step.phase, path: ["phase"] }]),
  },
];

const before = ({ beginsFrom }: Module): Reference[] =>
  beginsFrom === undefined ? [] : [{ id: beginsFrom, path: ["begins-from"] }];

const onward = (module: Module): Reference[] =>
  [...module.procedure.leaves].flatMap(([id, { to }]) =>
    to === undefined ? [] : [{ id: to, path: ["leaves", id, "to"] }],
  );

export const references: Rule = {
  name: "references",
  check(content, reporter) {
    for (const module of content.modules.values()) {
      for (const kind of kinds) checkKind(kind, module, content, reporter);
    }
    for (const sheet of sheetsOf(content)) {
      if (sheet.kind !== "substance") continue;
      for (const { id, path } of list("hazards", sheet.hazards)) {
        reportUnknown(
          "unknown-hazard",
          "hazard",
          id,
          knownHazards(content),
          inFile(content, sheet, path),
          reporter,
        );
      }
    }
  },
};

function checkKind(kind: ReferenceKind, module: Module, content: Content, reporter: Reporter): void {
  const known = kind.known(content, module);
  for (const { id, path } of kind.ofModule(module)) {
    reportUnknown(kind.code, kind.noun, id, known, inFile(content, module, path), reporter);
  }
  for (const step of module.procedure.steps) {
    for (const { id, path } of kind.ofStep(step)) {
      reportUnknown(kind.code, kind.noun, id, known, inStep(content, module, step, path), reporter);
    }
  }
}

/** Reports an id that is not among the known ones, with the nearest of them. */
export function reportUnknown(
  code: Code,
  noun: string,
  id: string,
  known: Known,
  spot: Spot,
  reporter: Reporter,
): void {
  if (known.has(id)) return;
  reporter.report(code, spot, `there is no ${noun} "${id}"${nearestWords(id, known.keys())}`);
}
