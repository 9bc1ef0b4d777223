import type { Series } from "./size.ts";

/** BS 93: number, diameter and pitch in mm. The standard rounds 6p^1.2 to 0.1 mm (16 BA: 0.79) and 0.9^n to 0.01 mm. */
const rows: readonly (readonly [number: number, diameter: number, pitch: number])[] = [
  [0, 6, 1],
  [1, 5.3, 0.9],
  [2, 4.7, 0.81],
  [3, 4.1, 0.73],
  [4, 3.6, 0.66],
  [5, 3.2, 0.59],
  [6, 2.8, 0.53],
  [7, 2.5, 0.48],
  [8, 2.2, 0.43],
  [9, 1.9, 0.39],
  [10, 1.7, 0.35],
  [11, 1.5, 0.31],
  [12, 1.3, 0.28],
  [13, 1.2, 0.25],
  [14, 1, 0.23],
  [15, 0.9, 0.21],
  [16, 0.79, 0.19],
];

/** British Association threads from 0 BA to 16 BA. */
export function britishAssociation(): Series {
  const sizes = rows.map(([number, diameterMm, pitchMm]) => ({
    series: "BA" as const,
    size: String(number),
    designation: `${number} BA`,
    diameterMm,
    pitchMm,
    tpi: undefined,
    pitchNeeded: false,
  }));
  return { name: "BA", standard: "BS 93", angle: 47.5, sizes };
}
