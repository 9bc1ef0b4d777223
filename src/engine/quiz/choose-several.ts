import { t } from "../words.ts";
import { type Option, optionProblems, optionRemarks, readOption } from "./choice.ts";
import { choose, type Guess, tally } from "./guess.ts";
import {
  type Asked,
  answered,
  isBlank,
  jsonKind,
  type Kind,
  longestList,
  questionProblem,
  type Setting,
  unreadable,
} from "./kind.ts";
import { none, type Ratio, ratio } from "./ratio.ts";
import { shuffle } from "./shuffle.ts";

export interface ChooseSeveral extends Asked {
  readonly kind: "choose-several";
  readonly options: readonly Option[];
}

/** One or more options are right. The answer is the places of those ticked, ascending, each once. */
export const chooseSeveral: Kind<ChooseSeveral, readonly number[]> = {
  read({ options }, given) {
    if (isBlank(given)) return { state: "blank" };
    if (!Array.isArray(given)) return unreadable("wrong-kind", jsonKind(given), t`a list of options`);
    if (given.length > longestList)
      return unreadable("too-many", t`${given.length} options`, t`at most ${longestList}`);
    const places = new Set<number>();
    for (const one of given) {
      const place = readOption(options, one);
      if (!place.ok) return { state: "unreadable", problem: place.problem };
      places.add(place.value);
    }
    return answered([...places].sort((a, b) => a - b));
  },
  judge({ options }, answer) {
    return { credit: creditFor(options, new Set(answer)), failsCritical: false };
  },
  remarks({ options }, answer = []) {
    return optionRemarks(options, new Set(answer));
  },
  shown({ id, options }, seed) {
    return shuffle([...options.keys()], `${seed}/${id}`);
  },
};

export const chooseSeveralSetting: Setting<ChooseSeveral> = {
  problems({ options }) {
    const problems = optionProblems(options);
    if (options.length === 0 || options.some(({ right }) => !right)) return problems;
    const expected = t`a wrong option, without which ticking everything is right`;
    return [questionProblem("no-wrong-option", "only right options", expected), ...problems];
  },
  guesses: guessesOf,
};

/**
 * The part of the right options that is ticked less the part of the wrong ones that is, and no less than 0. Ticking
 * nothing or everything earns nothing, and so on average do ticks at random before the floor is put in. It is Youden's
 * index (sensitivity + specificity − 1; W. J. Youden, Cancer 3 (1950)). Without wrong options, the part ticked.
 */
function creditFor(options: readonly Option[], ticked: ReadonlySet<number>): Ratio {
  const count = { right: 0, hit: 0, wrong: 0, slip: 0 };
  for (const [place, { right }] of options.entries()) {
    count[right ? "right" : "wrong"]++;
    if (ticked.has(place)) count[right ? "hit" : "slip"]++;
  }
  return creditForCounts(count);
}

interface Counts {
  readonly right: number;
  /** How many of the right ones are ticked. */
  readonly hit: number;
  readonly wrong: number;
  /** How many of the wrong ones are ticked. */
  readonly slip: number;
}

function creditForCounts({ right, hit, wrong, slip }: Counts): Ratio {
  if (right === 0) return none;
  if (wrong === 0) return ratio(hit, right);
  return ratio(Math.max(0, hit * wrong - slip * right), right * wrong);
}

/** Each box ticked or not as a coin falls: all sets of ticks equally likely. */
function guessesOf({ options }: ChooseSeveral): Guess[] {
  const right = options.filter((option) => option.right).length;
  const wrong = options.length - right;
  const guesses: Guess[] = [];
  for (let hit = 0; hit <= right; hit++) {
    for (let slip = 0; slip <= wrong; slip++) {
      const credit = creditForCounts({ right, hit, wrong, slip });
      guesses.push({ credit, failsCritical: false, ways: choose(right, hit) * choose(wrong, slip) });
    }
  }
  return tally(guesses);
}
