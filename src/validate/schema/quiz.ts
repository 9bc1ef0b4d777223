import { z } from "zod";
import { fields, id, ids, share, text } from "./fields.ts";

const asked = {
  id,
  ask: text,
  why: text,
  see: text,
  objective: text.optional(),
  critical: z.boolean().default(false),
  points: z.number().positive("a number above 0").max(1000, "at most 1000").default(1),
};

const askedWords = {
  id: "The question's id, once in this quiz.",
  ask: "The question.",
  why: "Shown after the answer: why it is so.",
  see: 'What to read again: "#step-id" in quotes, or a relative path such as ../../hazards/x.md.',
  objective: "What a right answer shows that the trainee knows.",
  critical: "Whether it must be right for the quiz to be passed.",
  points: "What a right answer earns; 1 where nothing is said.",
  kind: "How it is answered: choose-one, choose-several, number or arrange.",
};

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

const chooseOne = fields(
  { ...asked, kind: z.literal("choose-one"), options },
  { ...askedWords, options: optionsWords },
);
const chooseSeveral = fields(
  { ...asked, kind: z.literal("choose-several"), options },
  { ...askedWords, options: optionsWords },
);
const number = fields(
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
const arrange = fields(
  { ...asked, kind: z.literal("arrange"), steps: ids },
  { ...askedWords, steps: "Ids of steps of this module, of which some must come before others." },
);

const question = z.discriminatedUnion("kind", [chooseOne, chooseSeveral, number, arrange], {
  error: ({ code }: { readonly code?: string }) =>
    code === "invalid_type" ? "a question with its id, kind, ask, why and see" : undefined,
});

export const quiz = fields(
  {
    pass: share.optional(),
    questions: z.array(question).max(200, "at most 200 questions"),
  },
  {
    pass: "The pass mark, such as 80 %; that of programme.yaml where nothing is said.",
    questions: "The questions, in order.",
  },
);

export type QuizData = z.output<typeof quiz>;
export type QuestionData = z.output<typeof question>;
