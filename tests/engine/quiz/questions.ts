/** Questions, answers and quizzes for tests: made by hand, and drawn by fast-check. */

import * as fc from "fast-check";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";
import type { ArrangeQuestion } from "../../../src/engine/quiz/arrange.ts";
import type { Option } from "../../../src/engine/quiz/choice.ts";
import type { ChooseOne } from "../../../src/engine/quiz/choose-one.ts";
import type { ChooseSeveral } from "../../../src/engine/quiz/choose-several.ts";
import type { Asked } from "../../../src/engine/quiz/kind.ts";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import type { MatchQuestion } from "../../../src/engine/quiz/match.ts";
import type { NumberQuestion } from "../../../src/engine/quiz/number.ts";
import type { PointQuestion } from "../../../src/engine/quiz/point.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import type { SortQuestion } from "../../../src/engine/quiz/sort.ts";
import type { TextQuestion } from "../../../src/engine/quiz/text.ts";
import { readTolerance } from "../../../src/engine/quiz/tolerance.ts";
import type { WorkedQuestion } from "../../../src/engine/quiz/worked.ts";
import { parseQuantity } from "../../../src/engine/workshop/quantity.ts";

const letters = "abcdefgh";

export function asked(id: string, more: Partial<Asked> = {}): Asked {
  return { id, ask: "?", why: "", see: "#step", objective: undefined, critical: false, points: 1, ...more };
}

/** Options by a pattern: "r" right, "w" wrong. */
export function options(pattern: string): Option[] {
  return [...pattern].map((letter, place) => ({
    text: `option ${place}`,
    right: letter === "r",
    why: `because ${place}`,
  }));
}

export function one(id: string, pattern: string, more: Partial<Asked> = {}): ChooseOne {
  return { ...asked(id, more), kind: "choose-one", options: options(pattern) };
}

export function several(id: string, pattern: string, more: Partial<Asked> = {}): ChooseSeveral {
  return { ...asked(id, more), kind: "choose-several", options: options(pattern) };
}

export function quantityQuestion(
  id: string,
  answer: string,
  tolerance?: string,
  more: Partial<Asked> = {},
): NumberQuestion {
  const read = parseQuantity(answer);
  if (!read.ok) throw new Error(answer);
  const span = tolerance === undefined ? undefined : readTolerance(read.value, tolerance);
  if (span?.ok === false) throw new Error(JSON.stringify(span.problem));
  return { ...asked(id, more), kind: "number", answer: read.value, tolerance: span?.value };
}

function pairOf(pair: string): Pair {
  const [first = "", then = ""] = pair;
  return { first, then, because: [`${first} opens the way to ${then}`], critical: pair.endsWith("!") };
}

/** Pairs as "ab" for a before b, "ab!" where that is critical; one letter is a step. */
export function order(
  id: string,
  steps: string,
  pairs: readonly string[],
  more: Partial<Asked> = {},
): ArrangeQuestion {
  const precedence: Precedence = { steps: [...steps], pairs: pairs.map(pairOf) };
  const named = [...steps].map((step) => ({ id: step, title: `Step ${step}` }));
  return { ...asked(id, more), kind: "arrange", steps: named, precedence };
}

/** Items "a", "b", … with choices "A", "B", …, and so many choices that belong to none. */
export function pairs(id: string, count: number, others: number, more: Partial<Asked> = {}): MatchQuestion {
  const names = [...letters.slice(0, count)];
  const spare = Array.from({ length: others }, (_, place) => `other ${place}`);
  return {
    ...asked(id, more),
    kind: "match",
    items: names.map((text, choice) => ({ text, choice, why: `because ${text}` })),
    choices: [...names.map((name) => name.toUpperCase()), ...spare],
    whyNot: spare.map((text) => `no use for ${text}`),
  };
}

export function word(
  id: string,
  answers: readonly string[],
  slips = 0,
  mistakes: readonly string[] = [],
  more: Partial<Asked> = {},
): TextQuestion {
  const known = mistakes.map((text) => ({ text, why: `${text} is another` }));
  return { ...asked(id, more), kind: "text", answers, slips, mistakes: known };
}

/** Places in a row from left to right by a pattern: "r" right, "w" wrong. */
export function places(id: string, pattern: string, more: Partial<Asked> = {}): PointQuestion {
  const width = 100 / pattern.length;
  return {
    ...asked(id, more),
    kind: "point",
    figure: { file: "modules/box/figures/box.svg", alt: "A box" },
    places: options(pattern).map((option, place) => ({
      ...option,
      shape: { kind: "circle", x: (place + 0.5) * width, y: 50, r: width / 3 },
    })),
  };
}

/** Items by their groups: "0112" puts the first into group 0 and so on. */
export function groups(id: string, pattern: string, more: Partial<Asked> = {}): SortQuestion {
  const count = Math.max(...[...pattern].map(Number)) + 1;
  return {
    ...asked(id, more),
    kind: "sort",
    groups: Array.from({ length: count }, (_, place) => `group ${place}`),
    items: [...pattern].map((group, place) => ({
      text: `item ${place}`,
      group: Number(group),
      why: `because ${place}`,
    })),
  };
}

export function cases(
  id: string,
  answers: readonly string[],
  tolerance: string,
  more: Partial<Asked> = {},
): WorkedQuestion {
  const numbers = answers.map((answer) => quantityQuestion(id, answer, tolerance, more));
  return {
    ...asked(id, more),
    kind: "worked",
    cases: numbers.map(({ answer }, place) => ({ ask: `case ${place}`, answer })),
    tolerance: numbers[0]!.tolerance,
    chosen: 0,
  };
}

export function quiz(pass: number, ...questions: Question[]): Quiz {
  return { pass, questions };
}

const common = fc.record({
  critical: fc.boolean(),
  points: fc.constantFrom(1, 2, 3, 0.5, 0.1, 0.7, 2.5),
});

const patterns = fc
  .tuple(fc.array(fc.constantFrom("r", "w"), { maxLength: 5 }), fc.nat(5))
  .map(([letters, at]) => {
    const cut = at % (letters.length + 1);
    return [...letters.slice(0, cut), "r", ...letters.slice(cut), "w"].join("");
  });

const orders = fc.integer({ min: 4, max: 8 }).chain((count) => {
  const all = [...letters.slice(0, count)].flatMap((first, place) =>
    [...letters.slice(place + 1, count)].map((then) => first + then),
  );
  const pair = fc.tuple(fc.constantFrom(...all), fc.constantFrom("", "!")).map((both) => both.join(""));
  return fc
    .array(pair, { minLength: 1, maxLength: 10 })
    .map((pairs) => [letters.slice(0, count), pairs] as const);
});

/** A question of any kind that can be answered both right and wrong. */
export function questionWith(id: string): fc.Arbitrary<Question> {
  return fc.oneof(
    fc
      .tuple(common, fc.nat(4), fc.nat(4))
      .map(([more, before, after]) => one(id, `w${"w".repeat(before)}r${"w".repeat(after)}`, more)),
    fc.tuple(common, patterns).map(([more, pattern]) => several(id, pattern, more)),
    fc
      .tuple(common, fc.integer({ min: 1, max: 10_000 }), fc.constantFrom("N·m", "in", "mL", "°C", "min"))
      .map(([more, amount, unit]) => quantityQuestion(id, `${amount / 100} ${unit}`, `0.05 ${unit}`, more)),
    fc.tuple(common, orders).map(([more, [steps, pairs]]) => order(id, steps, pairs, more)),
    fc
      .tuple(common, fc.integer({ min: 3, max: 8 }), fc.nat(3))
      .map(([more, count, others]) => pairs(id, count, others, more)),
    fc
      .tuple(common, fc.nat(1))
      .map(([more, slips]) => word(id, ["sewing oil", "oiling"], slips, ["boiling"], more)),
    fc
      .tuple(common, fc.nat(4), fc.nat(4))
      .map(([more, before, after]) => places(id, `w${"w".repeat(before)}r${"w".repeat(after)}`, more)),
    fc
      .tuple(common, fc.array(fc.constantFrom("0", "1", "2"), { maxLength: 6 }))
      .map(([more, rest]) => groups(id, `0011${rest.includes("2") ? "2" : ""}${rest.join("")}`, more)),
    common.map((more) => cases(id, ["3 mm", "4.5 mm", "6 mm"], "0.05 mm", more)),
  );
}

export const anyQuiz: fc.Arbitrary<Quiz> = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 100 }))
  .chain(([count, percent]) =>
    fc
      .tuple(...Array.from({ length: count }, (_, place) => questionWith(`q${place}`)))
      .map((questions) => ({ pass: percent / 100, questions })),
  );

/** Anything that JSON can hold, with a leaning to what looks like an answer. */
export const anyAnswer: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue(),
  fc.integer({ min: -1, max: 7 }),
  fc.array(fc.integer({ min: 0, max: 6 }), { maxLength: 8 }),
  fc.shuffledSubarray([...letters]),
  fc.integer({ min: 0, max: 9 }).map((place) => `option ${place}`),
  fc.array(fc.constantFrom(null, 0, 1, 2, "A", "b", "group 1", "other 0", -1, 1.5), { maxLength: 9 }),
  fc.constantFrom("Oiling", "boiling", "sewing  oil", "1e999", "١٢", "1,5", "½", "__proto__"),
  fc
    .tuple(fc.integer({ min: 0, max: 10_000 }), fc.constantFrom("", "N·m", "mm", "mL", "°F", "s"))
    .map(([amount, unit]) => `${amount / 100} ${unit}`.trim()),
);

/** What earns everything. */
export function rightAnswer(question: Question): unknown {
  switch (question.kind) {
    case "choose-one":
      return question.options.findIndex(({ right }) => right);
    case "choose-several":
      return question.options.filter(({ right }) => right).map(({ text }) => text);
    case "number":
      return `${question.answer.amount} ${question.answer.unit}`;
    case "arrange":
      return question.precedence.steps;
    case "match":
      return question.items.map(({ choice }) => question.choices[choice]);
    case "text":
      return question.answers[0]!.toUpperCase();
    case "point":
      return question.places.findIndex(({ right }) => right);
    case "sort":
      return question.items.map(({ group }) => group);
    case "worked": {
      const { amount, unit } = question.cases[question.chosen]!.answer;
      return `${amount} ${unit}`;
    }
  }
}
