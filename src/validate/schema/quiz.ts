import { z } from "zod";
import { fields, share, text, wholeNumber } from "./fields.ts";
import { chooseOne, chooseSeveral } from "./questions/choice.ts";
import { arrange, match, sort } from "./questions/placed.ts";
import { point } from "./questions/point.ts";
import { number, worked, written } from "./questions/written.ts";

const kinds = [chooseOne, chooseSeveral, number, arrange, match, written, point, sort, worked] as const;
const question = z.discriminatedUnion("kind", kinds, {
  error: ({ code }: { readonly code?: string }) =>
    code === "invalid_type" ? "a question with its id, kind, ask, why and see" : undefined,
});

const paperWords = "How many questions are drawn for each objective, written as at the questions.";

export const quiz = fields(
  {
    pass: share.optional(),
    paper: z
      .union([wholeNumber, fields({ objectives: z.record(text, wholeNumber) }, { objectives: paperWords })], {
        error: "how many questions a sitting draws, or {objectives: {objective: number}}",
      })
      .optional(),
    supervised: z.boolean().default(false),
    questions: z.array(question).max(200, "at most 200 questions"),
  },
  {
    pass: "The pass mark, such as 80 %; that of programme.yaml where nothing is said.",
    paper: "How many of the questions a sitting draws: a number, or a number for each objective.",
    supervised: "Whether it is sat under a mentor's eye: then the site holds no key to it.",
    questions: "The questions, in order.",
  },
);

export type QuizData = z.output<typeof quiz>;
export type QuestionData = z.output<typeof question>;
