/** Limits as people write them. */

import { t } from "../../words.ts";
import { significant } from "../grounds.ts";
import { parseQuantity } from "../quantity.ts";
import { bad, good, type Result } from "../result.ts";
import type { ExposureLimit } from "./substance.ts";

export type LimitCode = "limit";

/**
 * Reads a limit: `200 ppm`, `350 mg/m³`, `0.02 %` of the air, `10 % LFL` (or `LEL`, `of the lower limit`), the last by the
 * lower flammable limit that is handed in, as a part of the air.
 */
export function parseLimit(text: string, name: string, lowerLimit: number): Result<ExposureLimit, LimitCode> {
  const ofLower = /^(.*?%)\s*(?:of\s+)?(?:the\s+)?(?:LFL|LEL|lower\b.*)$/i.exec(text.trim());
  const read = parseQuantity(ofLower ? ofLower[1]! : text);
  if (!read.ok) return bad("limit", read.problem.found, read.problem.expected, read.problem.nearest);
  const { base, dimension, unit } = read.value;
  if (!(base > 0)) return bad("limit", text, t`a limit above 0`);
  if (dimension === "concentration")
    return good({ amount: significant(base * 1e6, 12), unit: "mg/m³", name });
  if (dimension !== "number" || unit === "") {
    return bad("limit", text, t`a limit such as 200 ppm, 350 mg/m³ or 10 % LFL`);
  }
  if (ofLower)
    return good({
      amount: significant(base * lowerLimit * 1e6, 12),
      unit: "ppm",
      name: t`${ofLower[1]!} of the lower limit`,
    });
  return good({ amount: significant(base * 1e6, 12), unit: "ppm", name });
}
