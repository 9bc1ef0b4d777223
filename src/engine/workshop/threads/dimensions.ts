import { type ClearanceHole, clearanceHole } from "./clearance.ts";
import { formOf } from "./form.ts";
import type { ThreadSize } from "./size.ts";
import { type TapDrill, tapDrill } from "./tap-drill.ts";

/** Basic dimensions: lengths in mm, areas in mm². */
export interface ThreadDimensions {
  readonly pitchDiameterMm: number;
  /** Of the nut where screw and nut differ (D1). */
  readonly minorDiameterMm: number;
  /** Of the screw (d3), where the standard gives one. */
  readonly rootDiameterMm: number | undefined;
  readonly stressAreaMm2: number;
  readonly tapDrill: TapDrill;
  /** Undefined where ISO 273 does not list the size. */
  readonly clearanceHole: ClearanceHole | undefined;
  readonly source: string;
}

/** The full basic dimensions of a size, by the formulas of its standard (`form.ts`). */
export function dimensionsOf(size: ThreadSize): ThreadDimensions {
  const form = formOf(size);
  const { diameterMm: d, pitchMm: p } = size;
  return {
    pitchDiameterMm: d - form.pitch(p),
    minorDiameterMm: d - form.minor(p),
    rootDiameterMm: form.root && d - form.root(p),
    stressAreaMm2: stressAreaMm2(size),
    tapDrill: tapDrill(size),
    clearanceHole: clearanceHole(size),
    source: form.source,
  };
}

/** The area that bears a pull, mm². */
export function stressAreaMm2(size: ThreadSize): number {
  return (Math.PI / 4) * stressDiameterMm(size) ** 2;
}

/** The diameter of the stress area, mm. */
export function stressDiameterMm(size: ThreadSize): number {
  return size.diameterMm - formOf(size).stress(size.pitchMm);
}

export function pitchDiameterMm(size: ThreadSize): number {
  return size.diameterMm - formOf(size).pitch(size.pitchMm);
}
