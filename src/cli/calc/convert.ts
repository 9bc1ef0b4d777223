import { formatQuantity } from "../../engine/workshop/format-quantity.ts";
import { convert as convertQuantity, parseQuantity } from "../../engine/workshop/quantity.ts";
import { jsonOption, printJson, WrongCall } from "../command.ts";
import { taken } from "./ask.ts";
import type { Sum } from "./sum.ts";

export const convert: Sum = {
  name: "convert",
  summary: "turns a quantity into another unit, by exact factors",
  usage: '"5 lbf·in" "N·m"',
  options: { json: jsonOption },
  words: 2,
  run(call, [text, unit], output) {
    if (text === undefined || unit === undefined) {
      throw new WrongCall('Give a quantity and a unit: benchwright calc convert "5 lbf·in" "N·m".');
    }
    const from = taken(parseQuantity(text), "The quantity", text);
    const to = taken(convertQuantity(from, unit), "The unit", unit);
    if (call.flag("json")) printJson(output, { value: to.amount, unit: to.unit });
    else {
      const figures = figuresOf(text);
      output.out(`${formatQuantity(from, figures)} = ${formatQuantity(to, figures)}\n`);
      output.out("Factors: NIST SP 811, Appendix B, from the definitions of the units.\n");
    }
  },
};

/** As many significant figures as were written, four at least and ten at most. */
function figuresOf(text: string): number {
  const longest = Math.max(...(text.match(/[\d.,]+/g) ?? []).map((digits) => significant(digits)));
  return Math.min(10, Math.max(4, longest));
}

function significant(digits: string): number {
  return digits.replace(/[.,]/g, "").replace(/^0+/, "").length;
}
