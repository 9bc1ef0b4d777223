import { z } from "zod";
import { ghsPictograms, signalWords, substanceUses } from "../../model/sheet.ts";
import { fields, ids, text, texts } from "./fields.ts";

export const tool = fields({
  title: text,
  summary: text,
  drive: text.optional(),
  use: texts.optional(),
  care: text.optional(),
});

export const substance = fields({
  title: text,
  summary: text,
  use: z.array(z.enum(substanceUses)),
  flammable: z.boolean(),
  signal: z
    .enum(["danger", "warning", "none"])
    .meta({ description: "The signal word of its label under GHS." }),
  pictograms: z.array(z.enum(ghsPictograms)).default([]),
  statements: z
    .array(z.string().regex(/^(EU)?H\d{3}[A-Za-z]*$/, "an H-statement code such as H226"))
    .default([]),
  "data-sheet": text,
  hazards: ids.default([]),
  instead: text.optional(),
});

export const hazard = fields({
  title: text,
  summary: text,
  signal: z.enum(signalWords).meta({ description: "Signal word as ANSI Z535.6 and ISO 3864-2 use it." }),
  hazard: text,
  consequence: text,
  avoid: z.array(text).min(1, "at least one way to avoid it"),
});
