/** Places on a figure, in percent of its width and height from its upper left corner. */

export type Shape =
  /** As wide and high as the figure's own proportions draw it: `r` is a percentage of either side. */
  | { readonly kind: "circle"; readonly x: number; readonly y: number; readonly r: number }
  | {
      readonly kind: "rectangle";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export function centreOf(shape: Shape): Spot {
  if (shape.kind === "circle") return { x: shape.x, y: shape.y };
  return { x: shape.x + shape.width / 2, y: shape.y + shape.height / 2 };
}

/** The edge belongs to it. */
export function contains(shape: Shape, { x, y }: Spot): boolean {
  if (shape.kind === "circle") return (x - shape.x) ** 2 + (y - shape.y) ** 2 <= shape.r ** 2;
  return x >= shape.x && x <= shape.x + shape.width && y >= shape.y && y <= shape.y + shape.height;
}

/** The left, upper, right and lower edge. */
export function edgesOf(shape: Shape): readonly [number, number, number, number] {
  const { x, y } = shape;
  if (shape.kind === "circle") return [x - shape.r, y - shape.r, x + shape.r, y + shape.r];
  return [x, y, x + shape.width, y + shape.height];
}

/** It lies on the figure with all of itself. */
export function isInside(shape: Shape): boolean {
  return edgesOf(shape).every((edge) => edge >= 0 && edge <= 100);
}

/** The place pointed at: of several, the one whose middle is nearest; undefined where there is none. O(places). */
export function placeAt(shapes: readonly Shape[], spot: Spot): number | undefined {
  const hit = [...shapes.keys()].filter((place) => contains(shapes[place]!, spot));
  const away = (place: number): number => {
    const { x, y } = centreOf(shapes[place]!);
    return (x - spot.x) ** 2 + (y - spot.y) ** 2;
  };
  return hit.sort((a, b) => away(a) - away(b))[0];
}
