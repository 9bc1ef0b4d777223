import { type Conversion, conversionIn, conversionSource } from "../../engine/workshop/asked/conversion.ts";
import type { Fields } from "../../engine/workshop/asked/fields.ts";
import { formatQuantity } from "../../engine/workshop/format-quantity.ts";
import type { Quantity } from "../../engine/workshop/quantity.ts";
import { jsonOption, printJson, WrongCall } from "../command.ts";
import { asked } from "./ask.ts";
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
    const { from, to, figures } = asked(call, {}, intoOne, {
      quantity: { text, name: "The quantity" },
      unit: { text: unit, name: "The unit" },
    });
    if (call.flag("json")) printJson(output, { value: to.amount, unit: to.unit });
    else {
      output.out(`${formatQuantity(from, figures)} = ${formatQuantity(to, figures)}\n`);
      output.out(`Factors: ${conversionSource}.\n`);
    }
  },
};

/** A call names the unit; into every unit of its kind is for a page. */
function intoOne(fields: Fields): (Conversion & { readonly to: Quantity }) | undefined {
  fields.needed("unit", "a unit such as N·m");
  const found = conversionIn(fields);
  return found?.to && { ...found, to: found.to };
}
