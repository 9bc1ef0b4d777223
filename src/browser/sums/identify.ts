/** A measured screw: which thread it can have. */
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { type Candidate, identifyThread, type Measured } from "../../engine/workshop/threads/identify.ts";
import { identificationGrounds } from "../../engine/workshop/threads/identify-words.ts";
import { mmPerInch } from "../../engine/workshop/threads/size.ts";
import { bothWords, inBoth, length, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";
import type { Fields } from "./fields.ts";

export const identify: Sum = {
  id: "identify",
  reckon(fields, units) {
    fields.needed("diameter", "a length such as 5.95 mm");
    const [diameterMm, pitchMm, angle] = [fields.lengthMm("diameter"), pitchIn(fields), angleIn(fields)];
    if (diameterMm === undefined || pitchMm === undefined || fields.troubles.length > 0) return undefined;
    return answer({ diameterMm, pitchMm, angle }, units);
  },
};

function pitchIn(fields: Fields): number | undefined {
  const [pitch, tpi] = [fields.text("pitch"), fields.text("tpi")];
  if (pitch === undefined && tpi === undefined)
    return fields.note(
      "pitch",
      "Nothing is written here; expected a pitch such as 1 mm, or threads per inch.",
    );
  if (pitch !== undefined && tpi !== undefined)
    return fields.note("tpi", "Found both a pitch and threads per inch; expected one of them.");
  if (pitch !== undefined) return fields.lengthMm("pitch");
  const perInch = fields.measure("tpi", { dimension: "number", least: "1", greatest: "400" });
  return perInch === undefined ? undefined : mmPerInch / perInch;
}

/** 55 and 55° are the same. */
function angleIn(fields: Fields): number | undefined {
  const text = fields.text("angle");
  if (text === undefined) return undefined;
  const marked = /^[\d.,]+$/.test(text) ? `${text}°` : text;
  const read = fields.taken("angle", parseQuantity(marked, "angle"));
  const range = { dimension: "angle", least: "20°", greatest: "120°" } as const;
  return read === undefined ? undefined : fields.within("angle", read.base, range);
}

function answer(measured: Measured, units: UnitSystem): Answer {
  const found = identifyThread(measured);
  const fits = found.candidates.length > 0;
  const shown = fits ? found.candidates : found.nearest;
  return {
    headline: fits ? fitWords(found.candidates) : "None of the threads known here fits.",
    figures: [],
    comparison: {
      caption: fits ? "Nearest first" : "For comparison only, the nearest",
      columns: ["Thread", "Flanks", "Diameter", "Pitch", "Yours differs by"],
      rows: shown.map((one) => rowOf(one, units)),
    },
    grounds: identificationGrounds(found),
  };
}

function fitWords([first, ...others]: readonly Candidate[]): string {
  const { designation } = first!.size;
  return others.length === 0
    ? `It can be ${designation}.`
    : `It can be ${designation}, or one of the others below.`;
}

function rowOf(one: Candidate, units: UnitSystem): string[] {
  const { designation, diameterMm, pitchMm, tpi } = one.size;
  const mm = (value: number): string => bothWords(inBoth("", value / 1000, length, units));
  return [
    designation,
    `${one.angle}°`,
    mm(diameterMm),
    tpi === undefined ? mm(pitchMm) : `${tpi} per inch, ${mm(pitchMm)}`,
    `${signed(one.diameterErrorMm)} mm in diameter, ${signed(one.pitchErrorMm)} mm in pitch`,
  ];
}

function signed(error: number): string {
  const text = formatNumber(Number(error.toFixed(3)));
  return text === "0" || text.startsWith("−") ? text : `+${text}`;
}
