import { z } from "zod";
import { byId, fields, minutes, share, text } from "./fields.ts";

export const condition = fields({ name: text, "look-for": text, "if-unknown": text });

export const programme = fields({
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
});
