/** A place on a figure. */
import { z } from "zod";
import { fields, text } from "../fields.ts";
import { asked, askedWords, keepOrder, keepOrderWords } from "./asked.ts";

const percentage = z.number("a percentage as a bare number, from 0 to 100");
const place = fields(
  {
    where: text,
    circle: z.tuple([percentage, percentage, percentage.positive("a radius above 0")]).optional(),
    rectangle: z
      .tuple([
        percentage,
        percentage,
        percentage.positive("a width above 0"),
        percentage.positive("a height above 0"),
      ])
      .optional(),
    right: z.boolean().default(false),
    why: text.optional(),
  },
  {
    where: "Where it lies, in words that do not name it: for those who answer from the list.",
    circle: "[x, y, radius] in percent of the figure's width and height: an oval where it is not square.",
    rectangle: "[left, top, width, height] in percent of the figure's width and height.",
    right: "Whether it is right.",
    why: "What lies there instead: a wrong place needs one.",
  },
).refine((one) => (one.circle === undefined) !== (one.rectangle === undefined), {
  error: "either circle: [x, y, radius] or rectangle: [left, top, width, height]",
});
export const point = fields(
  {
    ...asked,
    ...keepOrder,
    kind: z.literal("point"),
    figure: fields(
      { file: text, alt: text },
      { file: "The picture, as a path from this file.", alt: "What it shows, in words that do not answer." },
    ),
    places: z.array(place).max(20, "at most 20 places"),
  },
  {
    ...askedWords,
    ...keepOrderWords,
    figure: "The picture to point at.",
    places: "Places on it that can be pointed at, right and wrong ones.",
  },
);
