/** A figure with its item references. */
import { z } from "zod";
import { fields, id, text } from "./fields.ts";

const percentages = z.tuple([z.number(), z.number()], {
  error: "two bare numbers: percent of the figure's width, then of its height",
});

const item = fields(
  { of: id.optional(), name: text.optional(), at: percentages },
  {
    of: "Id of the part or fastener set.",
    name: "What it is called, where the module does not take it apart or the figure calls it otherwise.",
    at: "[x, y] of the place on it to which the line leads, in percent of the figure's width and height.",
  },
).refine(({ of, name }) => of !== undefined || name !== undefined, {
  error: "of: with the id of a part or fastener set, or a name:",
});

const numberWords = "an item number from 1 to 999, such as 4: {of: lid, at: [30, 55]}";

/** Numbers to items; JavaScript keeps such keys in the order of their value. */
const items = z
  .record(z.string().regex(/^[1-9]\d{0,2}$/, numberWords), item)
  .transform((record) => new Map(Object.entries(record).map(([number, one]) => [Number(number), one])));

export const figure = fields(
  { file: text, alt: z.string().default(""), caption: text.optional(), items: items.optional() },
  {
    file: "The picture, relative to this file: figures/motor.svg.",
    alt: "In words, what it shows to someone who can't see it.",
    caption: "What stands below it.",
    items:
      "Item references: numbers drawn beside the figure, each with what it is and where: {1: {of: lid, at: [30, 55]}}.",
  },
);

export type FigureData = z.output<typeof figure>;
