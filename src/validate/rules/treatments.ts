/** What the steps of a module bring to what they work on, by the sheets of their substances. */
import type { Treatment } from "../../engine/procedure/treatment.ts";
import type { Content } from "../../model/content.ts";
import type { ModuleStep } from "../../model/module.ts";
import type { Substance } from "../../model/sheet.ts";

/** A step with a drying substance, or one that says so, leaves what it works on dry. */
export const treatmentsIn =
  ({ substances }: Content) =>
  ({ substances: taken, dries, hotWork }: ModuleStep): Treatment => {
    const sheets = taken.map((id) => substances.get(id)).filter((sheet): sheet is Substance => !!sheet);
    const uses = new Set(sheets.flatMap((sheet) => sheet.uses));
    return {
      cleans: uses.has("cleaning"),
      lubricates: uses.has("lubricating"),
      penetrates: uses.has("penetrating"),
      flammable: sheets.some(({ flammable }) => flammable),
      dries: dries || uses.has("drying"),
      hotWork,
    };
  };
