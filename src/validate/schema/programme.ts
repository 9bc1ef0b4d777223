import { z } from "zod";
import { byId, fields, minutes, share, text } from "./fields.ts";

export const condition = fields(
  { name: text, "look-for": text, "if-unknown": text },
  {
    name: "What may be in the machine, such as lead in paint.",
    "look-for": "How it shows itself before work begins.",
    "if-unknown": "What to do where nobody can say whether it is there.",
  },
);

export const programme = fields(
  {
    name: text,
    place: text.optional(),
    summary: text.optional(),
    language: z
      .string()
      .regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/, "a language tag such as en")
      .default("en"),
    units: z.enum(["metric", "inch"]).default("metric"),
    session: minutes.optional(),
    pass: share.optional(),
    conditions: byId(condition).optional(),
    emergency: text.optional(),
  },
  {
    name: "The programme's name, as it stands at the head of every page.",
    place: "Where the workshop is.",
    summary: "Who works there on what, in a sentence or two.",
    language: "The language of the content, as a language tag: en, de, fr-CA.",
    units: "The units that come first: metric or inch.",
    session: "How long an evening's work is: 2 h 30 min.",
    pass: "The pass mark of a quiz that names none: 80 %.",
    conditions: "What to look for in a machine before work on it, by id.",
    emergency: "What to do and whom to call in an emergency.",
  },
);
