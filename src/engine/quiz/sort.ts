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
import { none, type Ratio, ratio } from "./ratio.ts";
import { shuffle } from "./shuffle.ts";

export interface SortQuestion extends Asked {
  readonly kind: "sort";
  readonly groups: readonly string[];
  readonly items: readonly SortItem[];
}

export interface SortItem {
  readonly text: string;
  /** The place of its group. */
  readonly group: number;
  readonly why: string | undefined;
}

/**
 * Items to be put into groups. The answer is the place of a group for each item, or null (`readPlaces`). Credit is the
 * number right beyond what putting all into the largest group would get right, as a part of the most that it can be,
 * and no less than 0: a guess that knows how many belong where, and nothing of what, earns nothing.
 */
export const sort: Kind<SortQuestion, Places> = {
  read({ items, groups }, given) {
    return readPlaces(items.length, groups, given);
  },
  judge(question, answer) {
    const hits = question.items.filter(({ group }, item) => answer[item] === group).length;
    return { credit: creditFor(question, hits), failsCritical: false };
  },
  remarks(question, answer = []) {
    return question.items.map((item, place) => remarkOn(question, item, answer[place]));
  },
  shown({ id, items }, seed) {
    return shuffle([...items.keys()], `${seed}/${id}`);
  },
};

export const sortSetting: Setting<SortQuestion> = { problems: problemsOf, guesses: guessesOf };

const sizesOf = ({ groups, items }: SortQuestion): number[] =>
  [...groups.keys()].map((place) => items.filter(({ group }) => group === place).length);

function creditFor(question: SortQuestion, hits: number): Ratio {
  const largest = Math.max(0, ...sizesOf(question));
  const most = question.items.length - largest;
  return most === 0 ? none : ratio(Math.max(0, hits - largest), most);
}

function remarkOn(
  { groups }: SortQuestion,
  { text, group, why = "" }: SortItem,
  place: number | undefined,
): Remark {
  const right = groups[group]!;
  if (place === undefined) return { verdict: "missed", about: [text, right], because: why };
  if (place === group) return { verdict: "right", about: [text, right], because: why };
  return { verdict: "wrong", about: [text, groups[place]!, right], because: why };
}

function problemsOf(question: SortQuestion): QuestionProblem[] {
  const { groups, items } = question;
  const problems: QuestionProblem[] = [];
  if (groups.length < 2)
    problems.push(questionProblem("too-few-groups", `${groups.length}`, "two groups or more"));
  if (items.length < 4) problems.push(questionProblem("too-few-items", `${items.length} items`, "4 or more"));
  for (const { first, place } of repeats(groups))
    problems.push(
      questionProblem("equal-groups", `"${groups[place]}" twice`, "groups that differ", [first, place]),
    );
  for (const { first, place } of repeats(items.map(({ text }) => text))) {
    problems.push(
      questionProblem("equal-items", `"${items[place]!.text}" twice`, "items that differ", [first, place]),
    );
  }
  for (const [place, size] of sizesOf(question).entries()) {
    if (size > 0) continue;
    const expected = t`an item in each group: an empty one is found out by counting`;
    problems.push(questionProblem("empty-group", `no item in "${groups[place]}"`, expected, [place]));
  }
  return problems;
}

/** Each item in any group as a die falls. */
function guessesOf(question: SortQuestion): Guess[] {
  const { groups, items } = question;
  return tally(
    Array.from({ length: items.length + 1 }, (_, hits) => ({
      credit: creditFor(question, hits),
      failsCritical: false,
      ways: choose(items.length, hits) * BigInt(groups.length - 1) ** BigInt(items.length - hits),
    })),
  );
}
