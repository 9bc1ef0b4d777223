import type { ThreadSize } from "./size.ts";

/**
 * The least outside diameter of a screw of medium fit, mm: es and Td of ISO 965-1 for 6g,
 * es = −(15 + 11P) µm, Td = 180 P^(2/3) − 3.15 P^(−1/2) µm, P in mm. The formulas are from memory, checked by M6 6g.
 */
export function leastDiameterMm({ diameterMm, pitchMm: p }: ThreadSize): number {
  const allowance = 15 + 11 * p;
  const tolerance = 180 * p ** (2 / 3) - 3.15 / Math.sqrt(p);
  return diameterMm - (allowance + tolerance) / 1000;
}
