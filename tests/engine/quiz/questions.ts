/** Questions, answers and quizzes for tests: made by hand, and drawn by fast-check. */

import * as fc from "fast-check";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";
import type { ArrangeQuestion } from "../../../src/engine/quiz/arrange.ts";
import type { Option } from "../../../src/engine/quiz/choice.ts";
import type { ChooseOne } from "../../../src/engine/quiz/choose-one.ts";
import type { ChooseSeveral } from "../../../src/engine/quiz/choose-several.ts";
import type { Asked } from "../../../src/engine/quiz/kind.ts";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import type { NumberQuestion } from "../../../src/engine/quiz/number.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import { readTolerance } from "../../../src/engine/quiz/tolerance.ts";
import { parseQuantity } from "../../../src/engine/workshop/quantity.ts";

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

const letters = "abcdefgh";

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
  }
}
