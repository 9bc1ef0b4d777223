import { z } from "zod";
import { fields, id, ids, share, text } from "./fields.ts";

const asked = {
  id,
  ask: text,
  why: text.meta({ description: "Shown after the answer: why it is so." }),
  see: text.meta({
    description: "What to read again: #step-id, or a relative path such as ../../hazards/x.md.",
  }),
  objective: text.optional(),
  critical: z.boolean().default(false),
  points: z.number().positive("a number above 0").max(1000, "at most 1000").default(1),
};

const option = fields({ text, right: z.boolean().default(false), why: text.optional() });
const options = z.array(option).max(20, "at most 20 options");

const chooseOne = fields({ ...asked, kind: z.literal("choose-one"), options });
const chooseSeveral = fields({ ...asked, kind: z.literal("choose-several"), options });
const number = fields({
  ...asked,
  kind: z.literal("number"),
  answer: z.union([text, z.number()], { error: "a number, or a quantity such as 0.9 N·m" }),
  tolerance: z.union([text, z.number()], { error: "a share such as 5 %, or a quantity" }).optional(),
});
const arrange = fields({ ...asked, kind: z.literal("arrange"), steps: ids });

const question = z.discriminatedUnion("kind", [chooseOne, chooseSeveral, number, arrange], {
  error: ({ code }: { readonly code?: string }) =>
    code === "invalid_type" ? "a question with its id, kind, ask, why and see" : undefined,
});

export const quiz = fields({
  pass: share.optional(),
  questions: z.array(question).max(200, "at most 200 questions"),
});

export type QuizData = z.output<typeof quiz>;
export type QuestionData = z.output<typeof question>;
