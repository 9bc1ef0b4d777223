/** What questions of every kind have. */
import { z } from "zod";
import { fields, id, text } from "../fields.ts";

export const asked = {
  id,
  ask: text,
  why: text,
  see: text,
  objective: text.optional(),
  critical: z.boolean().default(false),
  points: z.number().positive("a number above 0").max(1000, "at most 1000").default(1),
};

export const askedWords = {
  id: "The question's id, once in this quiz.",
  ask: "The question.",
  why: "Shown after the answer: why it is so.",
  see: 'What to read again: "#step-id" in quotes, or a relative path such as ../../hazards/x.md.',
  objective: "What a right answer shows that the trainee knows.",
  critical: "Whether it must be right for the quiz to be passed.",
  points: "What a right answer earns; 1 where nothing is said.",
  kind: "How it is answered: choose-one, choose-several, number, arrange, match, text, point, sort or worked.",
};

export const keepOrder = { "keep-order": z.boolean().default(false) };
export const keepOrderWords = {
  "keep-order": "Whether what is chosen from is shown as written, not shuffled.",
};

/** Wrong things that come with their reason. */
export const reasoned = (whose: string) =>
  z
    .array(fields({ text, why: text }, { text: whose, why: "What is wrong with it." }))
    .max(20, "at most 20")
    .default([]);
