/** Kinds with options. */
import { z } from "zod";
import { fields, text } from "../fields.ts";
import { asked, askedWords, keepOrder, keepOrderWords } from "./asked.ts";

const option = fields(
  { text, right: z.boolean().default(false), why: text.optional() },
  {
    text: "What stands beside the box to tick.",
    right: "Whether it is right.",
    why: "What is wrong with it: a wrong option needs one.",
  },
);
const options = z.array(option).max(20, "at most 20 options");
const optionsWords = "What to choose from: a list of options.";

export const chooseOne = fields(
  { ...asked, ...keepOrder, kind: z.literal("choose-one"), options },
  { ...askedWords, ...keepOrderWords, options: optionsWords },
);
export const chooseSeveral = fields(
  { ...asked, ...keepOrder, kind: z.literal("choose-several"), options },
  { ...askedWords, ...keepOrderWords, options: optionsWords },
);
