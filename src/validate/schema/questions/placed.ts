/** Kinds in which things are given a place: steps in order, pairs, items in groups. */
import { z } from "zod";
import { fields, ids, text } from "../fields.ts";
import { asked, askedWords, keepOrder, keepOrderWords, reasoned } from "./asked.ts";

export const arrange = fields(
  { ...asked, kind: z.literal("arrange"), steps: ids },
  { ...askedWords, steps: "Ids of 4 to 8 steps of this module, of which some must come before others." },
);

export const match = fields(
  {
    ...asked,
    ...keepOrder,
    kind: z.literal("match"),
    pairs: z
      .array(
        fields(
          { item: text, with: text, why: text.optional() },
          {
            item: "What stands on the left.",
            with: "The one choice that belongs to it.",
            why: "Why they belong together.",
          },
        ),
      )
      .max(20, "at most 20 pairs"),
    others: reasoned("A choice that belongs to none of the items."),
  },
  {
    ...askedWords,
    ...keepOrderWords,
    pairs: "3 to 8 items, each with the choice that belongs to it.",
    others: "Choices beyond those, each with what is wrong with it.",
  },
);
export const sort = fields(
  {
    ...asked,
    ...keepOrder,
    kind: z.literal("sort"),
    groups: z.array(text).max(6, "at most 6 groups"),
    items: z
      .array(
        fields(
          { text, group: text, why: text.optional() },
          {
            text: "What is to be sorted.",
            group: "The group that it belongs to, as under groups:.",
            why: "Why it belongs there.",
          },
        ),
      )
      .max(20, "at most 20 items"),
  },
  {
    ...askedWords,
    ...keepOrderWords,
    groups: "Names of the groups.",
    items: "What is to be sorted into them, 4 things or more.",
  },
);
