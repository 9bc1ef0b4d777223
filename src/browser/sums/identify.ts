/** A measured screw: which thread it can have. */
import { t } from "../../engine/words.ts";
import { measuredIn } from "../../engine/workshop/asked/thread.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { type Candidate, identifyThread, type Measured } from "../../engine/workshop/threads/identify.ts";
import { identificationGrounds } from "../../engine/workshop/threads/identify-words.ts";
import { bothWords, inBoth, length, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";

export const identify: Sum = {
  id: "identify",
  reckon(fields, units) {
    const measured = measuredIn(fields);
    return measured && answer(measured, units);
  },
};

function answer(measured: Measured, units: UnitSystem): Answer {
  const found = identifyThread(measured);
  const fits = found.candidates.length > 0;
  const shown = fits ? found.candidates : found.nearest;
  return {
    headline: fits ? fitWords(found.candidates) : t`None of the threads known here fits.`,
    figures: [],
    comparison: {
      caption: fits ? t`Nearest first` : t`For comparison only, the nearest`,
      columns: [t`Thread`, t`Flanks`, t`Diameter`, t`Pitch`, t`Yours differs by`],
      rows: shown.map((one) => rowOf(one, units)),
    },
    grounds: identificationGrounds(found),
  };
}

function fitWords([first, ...others]: readonly Candidate[]): string {
  const { designation } = first!.size;
  return others.length === 0
    ? t`It can be ${designation}.`
    : t`It can be ${designation}, or one of the others below.`;
}

function rowOf(one: Candidate, units: UnitSystem): string[] {
  const { designation, diameterMm, pitchMm, tpi } = one.size;
  const mm = (value: number): string => bothWords(inBoth("", value / 1000, length, units));
  return [
    designation,
    `${one.angle}°`,
    mm(diameterMm),
    tpi === undefined ? mm(pitchMm) : t`${tpi} per inch, ${mm(pitchMm)}`,
    t`${signed(one.diameterErrorMm)} mm in diameter, ${signed(one.pitchErrorMm)} mm in pitch`,
  ];
}

function signed(error: number): string {
  const text = formatNumber(Number(error.toFixed(3)));
  return text === "0" || text.startsWith("−") ? text : `+${text}`;
}
