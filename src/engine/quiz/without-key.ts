/**
 * A question as it may be printed where its key must not be: nothing that is right, no reason, no tolerance, and no order
 * in which the author wrote things down, for that is often the key. A row for each kind.
 */
import type { Quantity } from "../workshop/quantity.ts";
import type { Option } from "./choice.ts";
import { kindOf, type Question, type QuestionKind, type QuestionOf } from "./kinds.ts";

interface Row<One, Answer> {
  readonly strip: (question: One) => One;
  /** An answer to the stripped question in words that the whole question reads. */
  readonly name: (question: One, answer: Answer) => unknown;
}

const byText = <Item extends { readonly text: string }>(items: readonly Item[]): Item[] =>
  items.toSorted((a, b) => (a.text < b.text ? -1 : 1));

const sorted = (texts: readonly string[]): string[] => texts.toSorted((a, b) => (a < b ? -1 : 1));

const bare = <One extends Option>(options: readonly One[]): One[] =>
  byText(options).map((option) => ({ ...option, right: false, why: undefined }));

const unitOnly = ({ unit, dimension }: Quantity): Quantity => ({ unit, dimension, amount: 0, base: 0 });

const rows: { readonly [Kind in QuestionKind]: Row<QuestionOf<Kind>, never> } = {
  "choose-one": {
    strip: (question) => ({ ...question, options: bare(question.options) }),
    name: ({ options }, place: number) => options[place]!.text,
  },
  "choose-several": {
    strip: (question) => ({ ...question, options: bare(question.options) }),
    name: ({ options }, places: readonly number[]) => places.map((place) => options[place]!.text),
  },
  number: {
    strip: (question) => ({ ...question, answer: unitOnly(question.answer), tolerance: undefined }),
    name: (_question, { amount, unit }: Quantity) => `${amount} ${unit}`.trim(),
  },
  arrange: {
    strip: (question) => {
      const steps = question.steps.toSorted((a, b) => (a.title < b.title ? -1 : 1));
      return { ...question, steps, precedence: { steps: steps.map(({ id }) => id), pairs: [] } };
    },
    name: (_question, order: readonly string[]) => order,
  },
  match: {
    strip: (question) => ({
      ...question,
      items: question.items.map(({ text }) => ({ text, choice: -1, why: undefined })),
      choices: sorted(question.choices),
      whyNot: [],
    }),
    name: ({ choices }, places: readonly (number | undefined)[]) =>
      places.map((place) => (place === undefined ? null : choices[place]!)),
  },
  text: {
    strip: (question) => ({ ...question, answers: [], slips: 0, mistakes: [] }),
    name: (_question, written: string) => written,
  },
  point: {
    strip: (question) => ({ ...question, places: bare(question.places) }),
    name: ({ places }, place: number) => places[place]!.text,
  },
  sort: {
    strip: (question) => ({
      ...question,
      items: question.items.map(({ text }) => ({ text, group: -1, why: undefined })),
    }),
    name: ({ groups }, places: readonly (number | undefined)[]) =>
      places.map((place) => (place === undefined ? null : groups[place]!)),
  },
  worked: {
    strip: (question) => ({
      ...question,
      cases: question.cases.map(({ ask, answer }) => ({ ask, answer: unitOnly(answer) })),
      tolerance: undefined,
    }),
    name: (_question, { amount, unit }: Quantity) => `${amount} ${unit}`.trim(),
  },
};

const rowOf = (question: Question) => rows[question.kind] as unknown as Row<Question, unknown>;

/** What may be shown of a question of a supervised quiz. */
export function withoutKey(question: Question): Question {
  return { ...rowOf(question).strip(question), why: "", see: "" };
}

/**
 * An answer to a question without its key, in words that the whole question reads in whatever order it is written;
 * undefined where nothing was answered. One that can't be read is handed on as it is, for whoever marks it.
 */
export function namedAnswer(question: Question, given: unknown): unknown {
  const read = kindOf(question).read(question, given);
  if (read.state === "blank") return undefined;
  if (read.state === "unreadable") return given;
  return rowOf(question).name(question, read.answer);
}
