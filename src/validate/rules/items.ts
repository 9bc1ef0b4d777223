/** Item references lead to things that the module has, each once, and to places on their figure. */
import type { Content } from "../../model/content.ts";
import type { Figure, ItemReference, Module } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const items = moduleRule("item references", (module, content, reporter) => {
  for (const { figure, at } of figuresOf(module, content)) {
    const first = new Map<string, ItemReference>();
    for (const item of figure.items) {
      const spot = (...path: readonly string[]): Spot =>
        at(["figure", "items", String(item.number), ...path]);
      if (!item.at.every((percent) => percent >= 0 && percent <= 100))
        reporter.report(
          "item-place",
          spot("at"),
          `item ${item.number} is at [${item.at.join(", ")}]; expected percentages from 0 to 100`,
        );
      if (item.of === undefined) continue;
      checkThing(item.number, item.of, module, spot("of"), reporter);
      const other = first.get(item.of);
      if (other === undefined) first.set(item.of, item);
      else
        reporter.report(
          "item-twice",
          spot("of"),
          `items ${other.number} and ${item.number} are both "${item.of}"`,
          {
            ...at(["figure", "items", String(other.number), "of"]),
            message: `item ${other.number} stands here`,
          },
        );
    }
  }
});

function checkThing(
  number: number,
  id: string,
  { procedure: { parts, fasteners } }: Module,
  spot: Spot,
  reporter: Reporter,
): void {
  if (parts.has(id) || fasteners.has(id)) return;
  const known = [...parts.keys(), ...fasteners.keys()];
  reporter.report(
    "item-unknown",
    spot,
    `item ${number} is "${id}"; the module has no such part or fastener set${nearestWords(id, known)}`,
  );
}

interface Placed {
  readonly figure: Figure;
  readonly at: (path: YamlPath) => Spot;
}

function figuresOf(module: Module, content: Content): Placed[] {
  const own = module.figure && [
    { figure: module.figure, at: (path: YamlPath) => inFile(content, module, path) },
  ];
  const ofSteps = module.procedure.steps.flatMap((step) =>
    step.figure === undefined
      ? []
      : [{ figure: step.figure, at: (path: YamlPath) => inStep(content, module, step, path) }],
  );
  return [...(own ?? []), ...ofSteps];
}
