import { z } from "zod";
import { fastenerKinds } from "../../model/module.ts";
import { byId, fields, id, ids, text, texts, wholeNumber, writtenQuantity } from "./fields.ts";
import { protection } from "./step.ts";

const countFrom0 = z.int("a whole number").min(0, "a whole number from 0");
const outOrSlack = fields({ out: countFrom0.default(0), slack: countFrom0.default(0) });

const heldBy = z.union([ids, z.record(id, z.union([z.literal("all"), outOrSlack]))], {
  error: "a list of fastener sets, or a map such as {motor-bolts: {out: 2, slack: 1}}",
});

const part = fields({
  name: text,
  "held-by": heldBy.optional(),
  covers: ids.optional(),
  in: id.optional(),
  replaces: id.optional(),
  "only-while": byId(text).optional(),
  "never-left": z.literal("off").optional(),
  keep: text.optional(),
  note: text.optional(),
});

const loose = z.enum(["slack", "out"]);

const fastener = fields({
  name: text,
  count: wholeNumber,
  kind: z.enum(fastenerKinds).default("machine screw"),
  thread: text.optional(),
  length: writtenQuantity("length", "6 mm or 1/2 in").optional(),
  drive: text.optional(),
  keep: text.optional(),
  matched: z.boolean().default(false),
  "never-left": z
    .union([loose.transform((one) => [one]), z.array(loose)], { error: "slack, out or [slack, out]" })
    .optional(),
  torque: text.optional(),
  "torque-source": text.optional(),
  note: text.optional(),
});

const state = fields({
  name: text,
  values: z.array(text).min(2, "at least two values"),
  starts: text,
  ends: text.optional(),
  "never-left": texts.optional(),
});

const left = z.union(
  [
    z.enum(["off", "discarded", "slack"]),
    fields({ out: countFrom0.default(0), slack: countFrom0.default(0) }),
    fields({ to: id }),
  ],
  { error: "off, discarded, slack, {out: 1, slack: 2} or {to: module-id}" },
);

const limitCheck = fields({ check: text, limit: text.optional() });

export const module = fields({
  title: text,
  summary: text,
  revision: wholeNumber,
  issued: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, "a date such as 2026-11-20")
    .optional(),
  "written-by": text.optional(),
  "approved-by": text.optional(),
  needs: ids.default([]),
  tools: ids.default([]),
  substances: z
    .array(
      fields({ use: id, amount: writtenQuantity("volume", "150 mL").optional(), place: text.optional() }),
    )
    .default([]),
  hazards: ids.default([]),
  conditions: ids.default([]),
  parts: byId(part).optional(),
  fasteners: byId(fastener).optional(),
  state: byId(state).optional(),
  leaves: z
    .union([ids, z.record(id, left)], { error: "a list of ids, or a map of ids to how each is left" })
    .optional(),
  phases: byId(text).optional(),
  "as-found": z.array(limitCheck).default([]),
  "as-left": z.array(limitCheck).default([]),
  ends: fields({ done: text.optional(), conserve: text.optional(), refer: text.optional() }).default({}),
  sources: texts.default([]),
  ...protection,
});

export type ModuleData = z.output<typeof module>;
export type HeldByData = z.output<typeof heldBy>;
export type LeftData = z.output<typeof left>;
