import type { z } from "zod";
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
  return { ...base(source, data), kind: "tool", drive: data.drive, uses: data.use ?? [], care: data.care };
}

export function makeSubstance(source: Source, data: z.output<typeof schema.substance>): Substance {
  const { signal, pictograms, statements, hazards, flammable, instead } = data;
  return {
    ...base(source, data),
    kind: "substance",
    uses: data.use,
    ...{ signal, pictograms, statements, hazards, flammable, instead },
    dataSheet: data["data-sheet"],
  };
}

export function makeHazard(source: Source, data: z.output<typeof schema.hazard>): Hazard {
  const { signal, hazard, consequence, avoid } = data;
  return { ...base(source, data), kind: "hazard", signal, hazard, consequence, avoid };
}
