import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { Source, YamlPath } from "../../model/source.ts";
import type { Reporter, Spot } from "../reporter.ts";

/** A rule looks at content that is well formed field by field, and reports where it does not hang together. */
export interface Rule {
  readonly name: string;
  check(content: Content, reporter: Reporter): void;
}

/** A rule that looks at one module at a time. */
export function moduleRule(
  name: string,
  check: (module: Module, content: Content, reporter: Reporter) => void,
): Rule {
  return {
    name,
    check(content, reporter) {
      for (const module of content.modules.values()) check(module, content, reporter);
    },
  };
}

/** A place in the front matter of a sheet or module, or in a quiz. */
export function inFile(
  content: Content,
  item: { readonly path: string },
  path: YamlPath,
  end: Spot["end"] = "value",
): Spot {
  const source = content.sources.get(item.path) as Source;
  return { source, yaml: source.data, path, end };
}

/** A place in a step's block. */
export function inStep(
  content: Content,
  module: Module,
  step: ModuleStep,
  path: YamlPath,
  end: Spot["end"] = "value",
): Spot {
  return { source: content.sources.get(module.path) as Source, yaml: step.section.steps[0]!, path, end };
}
