import type { Figure } from "../../model/module.ts";
import { resolvePath } from "../../model/path.ts";
import type { Source } from "../../model/source.ts";
import type { FigureData } from "../schema/figure.ts";

export const makeFigure = (source: Source, data: FigureData): Figure => ({
  file: resolvePath(source.path, data.file) ?? data.file,
  alt: data.alt,
  caption: data.caption,
  items: [...(data.items ?? [])].map(([number, { of, name, at }]) => ({ number, of, name, at })),
});
