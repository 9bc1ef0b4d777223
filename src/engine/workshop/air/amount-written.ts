import { parseQuantity, type QuantityCode } from "../quantity.ts";
import { good, type Result } from "../result.ts";
import type { Substance } from "./substance.ts";

/** An amount of liquid as people write it, a volume or a mass, in litres: a mass by the specific gravity of the substance. */
export function parseLitres(
  text: string,
  { gravity }: Pick<Substance, "gravity">,
): Result<number, QuantityCode> {
  const mass = parseQuantity(text, "mass");
  if (mass.ok) return good(mass.value.base / gravity);
  const volume = parseQuantity(text, "volume");
  return volume.ok ? good(volume.value.base * 1000) : volume;
}
