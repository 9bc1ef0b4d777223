import { z } from "zod";
import { sumNames } from "../../engine/quiz/sums.ts";
import { fields, id, ids, share, text, wholeNumber } from "./fields.ts";

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
  kind: "How it is answered: choose-one, choose-several, number, arrange, match, text, point, sort or worked.",
};

const keepOrder = { "keep-order": z.boolean().default(false) };
const keepOrderWords = { "keep-order": "Whether what is chosen from is shown as written, not shuffled." };

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
  { ...asked, ...keepOrder, kind: z.literal("choose-one"), options },
  { ...askedWords, ...keepOrderWords, options: optionsWords },
);
const chooseSeveral = fields(
  { ...asked, ...keepOrder, kind: z.literal("choose-several"), options },
  { ...askedWords, ...keepOrderWords, options: optionsWords },
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

const reasoned = (whose: string) =>
  z
    .array(fields({ text, why: text }, { text: whose, why: "What is wrong with it." }))
    .max(20, "at most 20")
    .default([]);
const match = fields(
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
    pairs: "Items, each with the choice that belongs to it.",
    others: "Choices beyond those, each with what is wrong with it.",
  },
);
const written = fields(
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
    circle: "[x, y, radius] in percent of the figure's width and height.",
    rectangle: "[left, top, width, height] in percent of the figure's width and height.",
    right: "Whether it is right.",
    why: "What lies there instead: a wrong place needs one.",
  },
).refine((one) => (one.circle === undefined) !== (one.rectangle === undefined), {
  error: "either circle: [x, y, radius] or rectangle: [left, top, width, height]",
});
const point = fields(
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
const sort = fields(
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
    items: "What is to be sorted into them.",
  },
);
const figureText = z.union([text, z.number().transform(String)], {
  error: "a figure, with its unit where it has one",
});
const worked = fields(
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
    sum: `The sum that works out the answer: ${sumNames.join(", ")}.`,
    cases: "Real cases: the figures that the sum takes, by name. A sitting asks one of them.",
    in: "The unit in which the answer is told; that of the sum where nothing is said.",
    tolerance: "How far off is right too: 5 %, or a quantity of the same kind.",
  },
);

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
