/** What has to be checked again after a change: a module's faults follow from its own files, from what belongs to no module, and from outlines. */
import type { Content, Outline } from "../model/content.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { moduleOf } from "../model/link.ts";

/** What a check went by. */
export interface Grounds {
  readonly content: Pick<Content, "sources" | "pictures">;
  /** As JSON, in the order of their paths. */
  readonly outlines: string;
}

/** Files that have not changed must be the same objects. */
export function groundsOf(content: Grounds["content"], outlines: readonly Outline[]): Grounds {
  return { content, outlines: JSON.stringify([outlines, [...content.pictures]]) };
}

/** The modules of which a file has changed; undefined where something else has, so that all modules are to be checked. */
export function changedModules(before: Grounds, now: Grounds): ReadonlySet<string> | undefined {
  if (before.outlines !== now.outlines) return undefined;
  const [earlier, sources] = [before.content.sources, now.content.sources];
  const changed = [...sources.keys()].filter((path) => earlier.get(path) !== sources.get(path));
  const gone = [...earlier.keys()].filter((path) => !sources.has(path));
  const modules = [...changed, ...gone].map(moduleOf);
  return modules.every((module) => module !== undefined) ? new Set(modules) : undefined;
}

/** These modules alone, with all that belongs to none. */
export function only(modules: ReadonlySet<string>, content: Content): Content {
  const isOne = ([id]: readonly [string, unknown]) => modules.has(id);
  return {
    ...content,
    modules: new Map([...content.modules].filter(isOne)),
    quizzes: new Map([...content.quizzes].filter(isOne)),
    revisions: new Map([...content.revisions].filter(isOne)),
    released: new Map([...content.released].filter(isOne)),
    sources: new Map([...content.sources].filter(([path]) => isAmong(modules, path))),
  };
}

/** What was found in other modules than these. */
export const inOthers = (modules: ReadonlySet<string>, found: readonly Diagnostic[]): Diagnostic[] =>
  found.filter(({ file }) => !isAmong(modules, file));

/** True for files of these modules and of none. */
function isAmong(modules: ReadonlySet<string>, path: string): boolean {
  const module = moduleOf(path);
  return module === undefined || modules.has(module);
}
