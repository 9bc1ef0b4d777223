/** A programme's own substances: what a form offers first, and the figures that each brings with it. */
import { t } from "../../../src/engine/words.ts";
import type { OwnFigures } from "../../../src/engine/workshop/air/substance.ts";
import { substanceNamed } from "../../../src/engine/workshop/air/substances.ts";
import type { Substance } from "../../../src/model/sheet.ts";
import type { SumsPageData } from "../../../src/model/sums-data.ts";
import type { Choice } from "./form.ts";

/** Its figures stand on its own sheet or in the engine's table. */
export const isReckonable = ({ id, air }: Substance): boolean => air !== undefined || substanceNamed(id).ok;

/** By the id where the engine's table knows it, which fills up what its sheet leaves out; otherwise by its name. */
export const formValue = ({ id, title }: Substance): string => (substanceNamed(id).ok ? id : title);

export const choiceOf = (substance: Substance): Choice => ({
  value: formValue(substance),
  name: substance.title,
});

/** What each writes into the form when it is chosen, by its value. */
export function figuresToBring(substances: readonly Substance[]): SumsPageData["figures"] {
  return Object.fromEntries(
    substances.flatMap((one) => (one.air === undefined ? [] : [[formValue(one), writtenFigures(one.air)]])),
  );
}

/** By the name of the field, as one would write it there. */
export function writtenFigures(own: OwnFigures): Readonly<Record<string, string>> {
  const { molarMass, gravity, lowerLimit, exposure, flashC, boilingC, source } = own;
  const written = {
    "molar-mass": molarMass === undefined ? undefined : String(molarMass),
    gravity: gravity === undefined ? undefined : String(gravity),
    "lower-limit": lowerLimit === undefined ? undefined : `${plain(lowerLimit * 100)} %`,
    "exposure-limit": exposure && `${exposure.amount} ${exposure.unit}`,
    flash: flashC === undefined ? undefined : `${plain(flashC)} °C`,
    boils: boilingC === undefined ? undefined : `${plain(boilingC)} °C`,
    "figures-from": exposure === undefined ? source : t`${source}; limit: ${exposure.name}`,
  };
  return Object.fromEntries(Object.entries(written).filter(([, text]) => text !== undefined)) as Record<
    string,
    string
  >;
}

/** "flash point 39 °C, lower flammable limit 0.8 %", for a sheet; "" where it gives none. */
export function figureWords(own: OwnFigures): string {
  const written = writtenFigures(own);
  const limit = own.exposure && `${written["exposure-limit"]} (${own.exposure.name})`;
  const named = [
    [t`flash point`, written.flash],
    [t`boils at`, written.boils],
    [t`lower flammable limit`, written["lower-limit"]],
    [t`exposure limit`, limit],
    [t`molar mass`, written["molar-mass"] && t`${written["molar-mass"]} g/mol`],
    [t`specific gravity`, written.gravity],
  ];
  return named
    .filter(([, figure]) => figure !== undefined)
    .map((words) => words.join(" "))
    .join(", ");
}

/** Without the noise of binary fractions. */
const plain = (value: number): number => Number(value.toPrecision(12));
