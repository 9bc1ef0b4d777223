import { t } from "../words.ts";
import { repeats } from "./fold.ts";
import { choose, type Guess, tally } from "./guess.ts";
import {
  type Asked,
  type Kind,
  type QuestionProblem,
  questionProblem,
  type Remark,
  type Setting,
} from "./kind.ts";
import { type Places, readPlaces } from "./places.ts";
import { ratio } from "./ratio.ts";
import { shuffle } from "./shuffle.ts";

export interface MatchQuestion extends Asked {
  readonly kind: "match";
  readonly items: readonly MatchItem[];
  /** What belongs to the items, in their order, and then others that belong to none. */
  readonly choices: readonly string[];
  /** Why each choice beyond those of the items belongs to none, in their order. */
  readonly whyNot: readonly string[];
}

export interface MatchItem {
  readonly text: string;
  /** The place of its choice. */
  readonly choice: number;
  readonly why: string | undefined;
}

/**
 * Each item gets one choice, and each choice goes to one item. Credit is the part of the items that have their own; a
 * choice given to several counts for none of them, so that one choice for all earns nothing. The answer is the place
 * of a choice for each item, or null (`readPlaces`).
 */
export const match: Kind<MatchQuestion, Places> = {
  read({ items, choices }, given) {
    return readPlaces(items.length, choices, given);
  },
  judge({ items }, answer) {
    const hits = items.filter(({ choice }, item) => isHit(choice, item, answer)).length;
    return { credit: ratio(hits, Math.max(1, items.length)), failsCritical: false };
  },
  remarks(question, answer = []) {
    return question.items.map((_, item) => remarkOn(question, item, answer));
  },
  shown({ id, choices }, seed) {
    return shuffle([...choices.keys()], `${seed}/${id}`);
  },
};

export const matchSetting: Setting<MatchQuestion> = { problems: problemsOf, guesses: guessesOf };

const isHit = (choice: number, item: number, answer: Places): boolean =>
  answer[item] === choice && !isTwice(answer, item);

const isTwice = (answer: Places, item: number): boolean =>
  answer.some((place, other) => other !== item && place !== undefined && place === answer[item]);

function remarkOn({ items, choices, whyNot }: MatchQuestion, item: number, answer: Places): Remark {
  const { text, choice, why = "" } = items[item]!;
  const place = answer[item];
  const right = choices[choice]!;
  if (place === undefined) return { verdict: "missed", about: [text, right], because: why };
  if (isHit(choice, item, answer)) return { verdict: "right", about: [text, right], because: why };
  const about = [text, choices[place]!, right];
  if (place === choice)
    return { verdict: "wrong", about, because: t`one choice given to several counts for none` };
  const other = whyNot[place - (choices.length - whyNot.length)];
  return { verdict: "wrong", about, because: other ?? why };
}

/** With two pairs, who knows one knows both; more than eight are not kept in view on a phone: common practice. */
const fewest = 3;
const most = 8;

function problemsOf({ items, choices }: MatchQuestion): QuestionProblem[] {
  const problems: QuestionProblem[] = [];
  const count = t`${items.length} pairs`;
  if (items.length < fewest) problems.push(questionProblem("too-few-pairs", count, "3 to 8"));
  if (items.length > most) problems.push(questionProblem("too-many-pairs", count, "3 to 8"));
  for (const { first, place } of repeats(items.map(({ text }) => text))) {
    const found = t`"${items[place]!.text}" twice`;
    problems.push(questionProblem("equal-items", found, "items that differ", [first, place]));
  }
  for (const { first, place } of repeats(choices)) {
    const found = t`"${choices[place]!}" twice`;
    const [code, at] =
      place < items.length
        ? (["equal-choices", [first, place]] as const)
        : (["equal-others", [place - items.length]] as const);
    problems.push(questionProblem(code, found, "choices that differ, each for one item", at));
  }
  return problems;
}

/** Every way of giving the items different choices equally likely. */
function guessesOf({ items, choices }: MatchQuestion): Guess[] {
  const { length } = items;
  return tally(
    Array.from({ length: length + 1 }, (_, hits) => ({
      credit: ratio(hits, Math.max(1, length)),
      failsCritical: false,
      ways: choose(length, hits) * waysWithout(length - hits, choices.length - hits),
    })),
  );
}

/** Ways of giving so many items different choices, none its own: by inclusion and exclusion. O(n²). */
function waysWithout(items: number, choices: number): bigint {
  let ways = 0n;
  for (let own = 0; own <= items; own++) {
    const rest = choose(items, own) * falling(choices - own, items - own);
    ways += own % 2 === 0 ? rest : -rest;
  }
  return ways;
}

/** n (n − 1) … with so many factors. */
function falling(n: number, factors: number): bigint {
  let product = 1n;
  for (let i = 0; i < factors; i++) product *= BigInt(n - i);
  return product;
}
