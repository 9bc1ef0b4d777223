import type { z } from "zod";
import type { OwnFigures } from "../../engine/workshop/air/substance.ts";
import type { Hazard, Substance, Tool } from "../../model/sheet.ts";
import type { Source } from "../../model/source.ts";
import type * as schema from "../schema/sheets.ts";

const base = (source: Source, data: { title: string; summary: string }) => ({
  id: source.id,
  path: source.path,
  title: data.title,
  summary: data.summary,
  sections: source.sections,
});

export function makeTool(source: Source, data: z.output<typeof schema.tool>): Tool {
  return {
    ...base(source, data),
    kind: "tool",
    drives: data.drive ?? [],
    uses: data.use ?? [],
    care: data.care,
  };
}

export function makeSubstance(source: Source, data: z.output<typeof schema.substance>): Substance {
  const { signal, pictograms, statements, precautions, hazards, flammable, instead } = data;
  return {
    ...base(source, data),
    kind: "substance",
    uses: data.use,
    ...{ signal, pictograms, statements, precautions, hazards, flammable, instead },
    air: data.air && figuresOf(data.air),
    dataSheet: data["data-sheet"],
  };
}

/** Fields left out keep those of the table. */
function figuresOf(data: NonNullable<z.output<typeof schema.substance>["air"]>): OwnFigures {
  const figures = {
    molarMass: data["molar-mass"],
    gravity: data.gravity,
    lowerLimit: data["lower-limit"],
    exposure: data["exposure-limit"],
    flashC: data["flash-point"],
  };
  const given = Object.entries(figures).filter(([, figure]) => figure !== undefined);
  return { source: data.source, ...Object.fromEntries(given) };
}

export function makeHazard(source: Source, data: z.output<typeof schema.hazard>): Hazard {
  const { signal, hazard, consequence, avoid } = data;
  return { ...base(source, data), kind: "hazard", signal, hazard, consequence, avoid };
}
