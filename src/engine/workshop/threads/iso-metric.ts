import type { Series, ThreadSize } from "./size.ts";

type Row = readonly [diameter: number, coarse: number | undefined, fine: readonly number[]];

/** ISO 261: diameters with their coarse and fine pitches, mm; those of ISO 262 are among them. M5.5, M15, M17: fine only. */
const rows: readonly Row[] = [
  [1, 0.25, [0.2]],
  [1.1, 0.25, [0.2]],
  [1.2, 0.25, [0.2]],
  [1.4, 0.3, [0.2]],
  [1.6, 0.35, [0.2]],
  [1.8, 0.35, [0.2]],
  [2, 0.4, [0.25]],
  [2.2, 0.45, [0.25]],
  [2.5, 0.45, [0.35]],
  [3, 0.5, [0.35]],
  [3.5, 0.6, [0.35]],
  [4, 0.7, [0.5]],
  [4.5, 0.75, [0.5]],
  [5, 0.8, [0.5]],
  [5.5, undefined, [0.5]],
  [6, 1, [0.75]],
  [7, 1, [0.75]],
  [8, 1.25, [1, 0.75]],
  [9, 1.25, [1, 0.75]],
  [10, 1.5, [1.25, 1, 0.75]],
  [11, 1.5, [1, 0.75]],
  [12, 1.75, [1.5, 1.25, 1]],
  [14, 2, [1.5, 1.25, 1]],
  [15, undefined, [1.5, 1]],
  [16, 2, [1.5, 1]],
  [17, undefined, [1.5, 1]],
  [18, 2.5, [2, 1.5, 1]],
  [20, 2.5, [2, 1.5, 1]],
  [22, 2.5, [2, 1.5, 1]],
  [24, 3, [2, 1.5, 1]],
];

/** ISO metric threads from M1 to M24. */
export function isoMetric(): Series {
  const sizes = rows.flatMap(([diameter, coarse, fine]) => [
    ...(coarse === undefined ? [] : [metric(diameter, coarse, false)]),
    ...fine.map((pitch) => metric(diameter, pitch, true)),
  ]);
  return { name: "ISO metric", standard: "ISO 68-1, ISO 261", angle: 60, sizes };
}

function metric(diameterMm: number, pitchMm: number, pitchNeeded: boolean): ThreadSize {
  const size = `M${diameterMm}`;
  const designation = pitchNeeded ? `${size}x${pitchMm}` : size;
  return { series: "ISO metric", size, designation, diameterMm, pitchMm, tpi: undefined, pitchNeeded };
}
