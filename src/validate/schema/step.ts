import { z } from "zod";
import { byId, fields, id, ids, minutes, text, texts, wholeNumber } from "./fields.ts";

/** `a`, `[a, b]`, `{a: 2}` or `[a, {b: 2}]`: what an act is done to, with a count where not all. */
const targets = z.union([id, z.array(z.union([id, z.record(id, wholeNumber)])), z.record(id, wholeNumber)], {
  error: "an id, a list of ids, or a map of ids to counts such as {guard-screws: 1}",
});

const reason = z.union([text, fields({ because: text, critical: z.boolean().default(false) })], {
  error: "a reason in words",
});

export const figure = fields({ file: text, alt: z.string().default(""), caption: text.optional() });

export const protection = {
  wear: texts.optional(),
  "never-wear": texts.optional(),
  waste: texts.optional(),
};

export const step = fields({
  id,
  slacken: targets.optional(),
  remove: targets.optional(),
  work: targets.optional(),
  refit: targets.optional(),
  tighten: targets.optional(),
  makes: byId(text).optional(),
  through: ids.optional(),
  while: byId(text).optional(),
  after: byId(reason).optional(),
  "may-swap": byId(text).optional(),
  critical: z.boolean().default(false),
  time: minutes.optional(),
  wait: minutes.optional(),
  stop: z.boolean().default(false),
  dries: z.boolean().default(false),
  tools: ids.optional(),
  substances: ids.optional(),
  hazards: ids.optional(),
  conditions: ids.optional(),
  check: text.optional(),
  phase: id.optional(),
  figure: figure.optional(),
  record: texts.optional(),
  "record-for": id.optional(),
  feel: text.optional(),
  mistakes: z.array(fields({ mistake: text, result: text })).optional(),
  "if-not": z.array(fields({ sign: text, cause: text, do: text })).optional(),
  ...protection,
});

export type StepData = z.output<typeof step>;
export type TargetsData = NonNullable<StepData["slacken"]>;
