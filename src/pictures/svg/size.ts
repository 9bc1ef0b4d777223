/** The size of a drawing in pixels. */
import type { Size } from "../../model/picture-files.ts";

/** SVG 2, 7.2 and 8.2: width and height in px or without a unit, otherwise the size of the view box. */
export function svgSize(root: ReadonlyMap<string, string>): Size | undefined {
  const pixels = (name: string) => Number(/^\s*([\d.]+)(?:px)?\s*$/.exec(root.get(name) ?? "")?.[1]);
  const box = (root.get("viewBox") ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [width, height] = [pixels("width") || box[2], pixels("height") || box[3]];
  if (!(width! > 0 && height! > 0)) return undefined;
  return { width: Math.max(1, Math.round(width!)), height: Math.max(1, Math.round(height!)) };
}
