import { t } from "../../words.ts";
import { parseQuantity, type QuantityCode } from "../quantity.ts";
import { bad, good, type Result } from "../result.ts";
import { withArticle } from "../units.ts";

/** A room as people write it: `30 m³`, `4 m x 3 m x 2.4 m`, `12 x 10 x 8 ft` (the last unit counts for all). In m³. */
export function parseRoom(text: string): Result<number, QuantityCode | "room"> {
  const sides = text.split(/\s*[x×*]\s*/i);
  if (sides.length === 1) return sized(text, "volume");
  if (sides.length !== 3) return bad("room", text, t`a volume such as 30 m³, or length x width x height`);
  const unit = /[^\d.,/\s].*$/.exec(sides[2]!)?.[0] ?? "";
  let volume = 1;
  for (const side of sides) {
    const read = sized(/^[\d.,/\s]+$/.test(side) ? `${side} ${unit}` : side, "length");
    if (!read.ok) return read;
    volume *= read.value;
  }
  return good(Number(volume.toPrecision(12)));
}

function sized(text: string, dimension: "length" | "volume"): Result<number, QuantityCode | "room"> {
  const read = parseQuantity(text, dimension);
  if (!read.ok) return read;
  return read.value.base > 0
    ? good(read.value.base)
    : bad("room", text, t`${withArticle(dimension)} above 0`);
}
