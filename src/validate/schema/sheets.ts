import { z } from "zod";
import { parseLimit } from "../../engine/workshop/air/exposure-written.ts";
import { ghsPictograms, signalWords, substanceUses } from "../../model/sheet.ts";
import { celsius, fault, fields, ids, share, text, texts } from "./fields.ts";

export const tool = fields(
  {
    title: text,
    summary: text,
    drive: texts.optional(),
    use: texts.optional(),
    care: text.optional(),
  },
  {
    title: "The tool's name, as the heading of its sheet.",
    summary: "What it is, in one sentence.",
    drive: "The drive that it fits, where it is a driver, or a list of them: slotted, hexagon socket.",
    use: "What it is used for: a text or a list.",
    care: "What keeps it in order.",
  },
);

/** A limit of exposure, which may say whose it is in brackets: 350 mg/m³ (NIOSH REL). */
const exposureLimit = z.string("a limit such as 350 mg/m³").transform((written, context) => {
  const [, figure = "", name = "exposure limit of the sheet"] =
    /^([^(]*)(?:\((.*)\))?\s*$/.exec(written) ?? [];
  const read = parseLimit(figure.trim(), name, 1);
  if (read.ok) return read.value;
  context.addIssue(
    fault("wrong-unit", `a limit such as 350 mg/m³ or 200 ppm, not "${written.slice(0, 60)}"`),
  );
  return z.NEVER;
});

const air = fields(
  {
    "molar-mass": z.number().positive("a number above 0, in g/mol").optional(),
    gravity: z.number().positive("a number above 0").optional(),
    "lower-limit": share.optional(),
    "exposure-limit": exposureLimit.optional(),
    "flash-point": celsius.optional(),
    source: text,
  },
  {
    "molar-mass": "Molar mass in g/mol; of a mixture the lowest.",
    gravity: "Weight against water; of a range the highest.",
    "lower-limit": "Lower flammable limit as a share of the air: 0.8 %.",
    "exposure-limit": "The strictest limit of exposure, whose in brackets: 350 mg/m³ (NIOSH REL).",
    "flash-point": "Flash point, the lowest known: 38 °C.",
    source: "Where the figures come from: the safety data sheet with its date and section.",
  },
);

export const substance = fields(
  {
    title: text,
    summary: text,
    use: z.array(z.enum(substanceUses)),
    flammable: z.boolean(),
    signal: z.enum(["danger", "warning", "none"]),
    pictograms: z.array(z.enum(ghsPictograms)).default([]),
    statements: z
      .array(z.string().regex(/^(EU)?H\d{3}[A-Za-z]*$/, "an H-statement code such as H226"))
      .default([]),
    precautions: z
      .array(z.string().regex(/^P\d{3}(\+P\d{3})*$/, "a P-statement code such as P210 or P305+P351+P338"))
      .default([]),
    "data-sheet": text,
    air: air.optional(),
    hazards: ids.default([]),
    instead: text.optional(),
  },
  {
    title: "The substance's name, as the heading of its sheet.",
    summary: "What it is and what it is for, in one sentence.",
    use: "What it is used for: cleaning, drying, lubricating, penetrating.",
    flammable: "Whether it can burn, as its safety data sheet says.",
    signal: "The signal word of its label (GHS): danger, warning or none.",
    pictograms: "The pictograms of its label (GHS): GHS02.",
    statements: "The hazard statements of its label, by code: H226.",
    precautions: "The precautionary statements of its label, by code: P210.",
    air: "Figures for the sums of its vapour; those of the tool's table where nothing is said.",
    "data-sheet": "Where its safety data sheet is kept. What that says decides.",
    hazards: "Ids of the hazards that come with it; of one that can burn, that of fire first.",
    instead: "What milder thing is tried first.",
  },
);

export const hazard = fields(
  {
    title: text,
    summary: text,
    signal: z.enum(signalWords),
    hazard: text,
    consequence: text,
    avoid: z.array(text, "a list of what one does to avoid it").superRefine((ways, context) => {
      if (ways.length === 0)
        context.addIssue(fault("no-avoidance", "a list with at least one way to avoid the hazard"));
    }),
  },
  {
    title: "The hazard's name, as the heading of its sheet.",
    summary: "What can happen, in one sentence.",
    signal:
      "How bad it can be: danger, warning, caution or notice (signal words of ANSI Z535.6 and ISO 3864-2).",
    hazard: "What it is that can hurt someone or ruin something.",
    consequence: "What it does to them.",
    avoid: "What to do so that it does not happen: a list.",
  },
);
