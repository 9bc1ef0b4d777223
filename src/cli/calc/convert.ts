import {
  type Conversion,
  conversionIn,
  conversionSource,
  inOtherUnits,
} from "../../engine/workshop/asked/conversion.ts";
import type { Fields } from "../../engine/workshop/asked/fields.ts";
import { formatQuantity } from "../../engine/workshop/format-quantity.ts";
import { jsonOption, printJson, WrongCall } from "../command.ts";
import { asked } from "./ask.ts";
import type { Sum } from "./sum.ts";

export const convert: Sum = {
  name: "convert",
  summary: "turns a quantity into another unit, or into every unit of its kind, by exact factors",
  usage: '"5 lbf·in" ["N·m"]',
  options: { json: jsonOption },
  words: 2,
  run(call, [text, unit], output) {
    if (text === undefined) {
      throw new WrongCall(
        'Give a quantity and a unit: benchwright calc convert "5 lbf·in" "N·m"; or a quantity alone, for all units of its kind.',
      );
    }
    const { from, to, figures } = asked(call, {}, unit === undefined ? conversionIn : intoOne, {
      quantity: { text, name: "The quantity" },
      ...(unit === undefined ? {} : { unit: { text: unit, name: "The unit" } }),
    });
    const told = to === undefined ? inOtherUnits(from) : [to];
    if (call.flag("json")) {
      const values = told.map(({ amount, unit }) => ({ value: amount, unit }));
      printJson(output, to === undefined ? { values } : values[0]);
    } else {
      for (const each of told)
        output.out(`${formatQuantity(from, figures)} = ${formatQuantity(each, figures)}\n`);
      output.out(`Factors: ${conversionSource}.\n`);
    }
  },
};

/** A unit that was given must be one: "" is not every unit. */
function intoOne(fields: Fields): Conversion | undefined {
  fields.needed("unit", "a unit such as N·m");
  return conversionIn(fields);
}
