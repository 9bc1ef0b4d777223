/** What other files may name of each content file: all that rules need to know of modules of another share. */
import type { Content, Outline } from "../model/content.ts";
import { placesOn } from "../model/link.ts";
import type { Module } from "../model/module.ts";
import { resolvePath } from "../model/path.ts";
import type { Source } from "../model/source.ts";

export function outlinesOf({ sources, modules }: Pick<Content, "sources" | "modules">): Outline[] {
  return [...sources.values()].map((source) =>
    outlineOf(source, source.kind === "module" ? modules.get(source.id) : undefined),
  );
}

function outlineOf(source: Source, module: Module | undefined): Outline {
  const figures =
    module?.procedure.steps.flatMap(({ figure }) => (figure === undefined ? [] : [figure.file])) ?? [];
  const shown = source.pictures.map(({ src }) => resolvePath(source.path, src));
  return {
    path: source.path,
    places: [...placesOn(source)],
    pictures: [...shown, ...figures].filter((path) => path !== undefined),
    needs: module?.needs ?? [],
    isSound: source.kind !== "module" || module !== undefined,
  };
}
