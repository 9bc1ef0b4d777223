/** What the steps of a module bring to what they work on, by the sheets of their substances. */
import type { Treatment } from "../../engine/procedure/treatment.ts";
import type { Content } from "../../model/content.ts";
import { type ModuleStep, usesIn } from "../../model/module.ts";
import type { Substance } from "../../model/sheet.ts";

/** A step with a drying substance, or one that says so, leaves what it works on dry. */
export const treatmentsIn =
  ({ substances }: Content) =>
  (step: ModuleStep): Treatment => {
    const sheets = step.substances
      .map((id) => substances.get(id))
      .filter((sheet): sheet is Substance => !!sheet);
    const uses = new Set(sheets.flatMap((sheet) => usesIn(step, sheet)));
    return {
      cleans: uses.has("cleaning"),
      lubricates: uses.has("lubricating"),
      oily: uses.has("lubricating") || sheets.some(isOily),
      flammable: sheets.some(({ flammable }) => flammable),
      dries: step.dries || uses.has("drying"),
      hotWork: step.hotWork,
    };
  };

/** Oil is oil, also where it cleans or loosens. */
const isOily = ({ uses }: Substance): boolean => uses.includes("lubricating") || uses.includes("penetrating");
