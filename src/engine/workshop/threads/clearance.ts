import type { ThreadSize } from "./size.ts";

/** Diameters of a hole that a screw passes through, mm. */
export interface ClearanceHole {
  readonly fine: number;
  readonly medium: number;
  readonly coarse: number;
}

/** ISO 273:1979. M4.5 and from M18 on: from memory of the same table. */
const rows: readonly (readonly [size: string, fine: number, medium: number, coarse: number])[] = [
  ["M1", 1.1, 1.2, 1.3],
  ["M1.2", 1.3, 1.4, 1.5],
  ["M1.4", 1.5, 1.6, 1.8],
  ["M1.6", 1.7, 1.8, 2],
  ["M2", 2.2, 2.4, 2.6],
  ["M2.5", 2.7, 2.9, 3.1],
  ["M3", 3.2, 3.4, 3.6],
  ["M3.5", 3.7, 3.9, 4.2],
  ["M4", 4.3, 4.5, 4.8],
  ["M4.5", 4.8, 5, 5.3],
  ["M5", 5.3, 5.5, 5.8],
  ["M6", 6.4, 6.6, 7],
  ["M7", 7.4, 7.6, 8],
  ["M8", 8.4, 9, 10],
  ["M10", 10.5, 11, 12],
  ["M12", 13, 13.5, 14.5],
  ["M14", 15, 15.5, 16.5],
  ["M16", 17, 17.5, 18.5],
  ["M18", 19, 20, 21],
  ["M20", 21, 22, 24],
  ["M22", 23, 24, 26],
  ["M24", 25, 26, 28],
];

/** The clearance holes of ISO 273 for a metric size, coarse or fine; undefined where it lists none. */
export function clearanceHole({ size, series }: ThreadSize): ClearanceHole | undefined {
  const row = series === "ISO metric" ? rows.find(([name]) => name === size) : undefined;
  return row && { fine: row[1], medium: row[2], coarse: row[3] };
}
