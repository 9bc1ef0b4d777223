/** What to wear, what never to wear, and where the waste goes. */
import { t } from "../../src/engine/words.ts";
import type { Protection } from "../../src/model/module.ts";
import { type Line, line } from "./lines.ts";

export function worn({ wear, neverWear }: Protection): Line[] {
  return [line(t`Wear`, wear.join("; ")), line(t`Never wear`, neverWear.join("; "), "never-wear")];
}

export function wasted({ waste }: Protection): Line {
  return line(t`Waste`, waste.join("; "));
}
