/** Kinds that are answered in writing: a figure, a word, a figure worked out from a case. */
import { z } from "zod";
import { sumNames, takenBy } from "../../../engine/quiz/sums.ts";
import { fields, text } from "../fields.ts";
import { asked, askedWords, reasoned } from "./asked.ts";

export const number = fields(
  {
    ...asked,
    kind: z.literal("number"),
    answer: z.union([text, z.number()], { error: "a number, or a quantity such as 0.9 N·m" }),
    tolerance: z.union([text, z.number()], { error: "a share such as 5 %, or a quantity" }).optional(),
  },
  {
    ...askedWords,
    answer: "The right figure, with its unit where it has one: 50 mL.",
    tolerance: "How far off is right too: 5 %, or a quantity of the same kind.",
  },
);
export const written = fields(
  {
    ...asked,
    kind: z.literal("text"),
    answers: z.array(text.max(200, "at most 200 characters")).max(20, "at most 20 answers"),
    slips: z.int("a whole number from 0").min(0, "a whole number from 0").max(3, "at most 3").default(0),
    mistakes: reasoned("What people write instead: never right, however near it is."),
  },
  {
    ...askedWords,
    answers: "What is right; case, accents and spaces do not count. The first is the one that is told.",
    slips: "How many letters may be wrong, missing or too many; 0 where nothing is said.",
    mistakes: "Wrong answers that people give, each with what is wrong with it.",
  },
);
const figureText = z.union([text, z.number().transform(String)], {
  error: "a figure, with its unit where it has one",
});
export const worked = fields(
  {
    ...asked,
    kind: z.literal("worked"),
    sum: z.enum(sumNames as [string, ...string[]], { error: `one of the sums: ${sumNames.join(", ")}` }),
    cases: z.array(z.record(text, figureText)).max(50, "at most 50 cases"),
    in: z.string().trim().optional(),
    tolerance: z.union([text, z.number()], { error: "a share such as 5 %, or a quantity" }).optional(),
  },
  {
    ...askedWords,
    ask: "The question, with {name} where a figure of the case stands.",
    sum: `The sum that works out the answer, with the figures that it takes: ${sumNames
      .map((name) => `${name} (${takenBy(name).join(", ")})`)
      .join(", ")}.`,
    cases: "2 real cases or more: the figures that the sum takes, by name. A sitting asks one of them.",
    in: "The unit in which the answer is told; that of the sum where nothing is said.",
    tolerance: "How far off is right too: 5 %, or a quantity of the same kind.",
  },
);
