import { type Option, optionGuesses, optionProblems, optionRemarks, readOption } from "./choice.ts";
import { type Asked, answered, isBlank, type Kind, questionProblem, type Setting } from "./kind.ts";
import { none, whole } from "./ratio.ts";
import { shuffle } from "./shuffle.ts";

export interface ChooseOne extends Asked {
  readonly kind: "choose-one";
  readonly options: readonly Option[];
}

/** One option is right: it earns all, any other nothing. The answer is the place of an option. */
export const chooseOne: Kind<ChooseOne, number> = {
  read({ options }, given) {
    if (isBlank(given)) return { state: "blank" };
    const place = readOption(options, given);
    return place.ok ? answered(place.value) : { state: "unreadable", problem: place.problem };
  },
  judge({ options }, answer) {
    return { credit: options[answer]!.right ? whole : none, failsCritical: false };
  },
  remarks({ options }, answer) {
    return optionRemarks(options, new Set(answer === undefined ? [] : [answer]));
  },
  shown({ id, options }, seed) {
    return shuffle([...options.keys()], `${seed}/${id}`);
  },
};

export const chooseOneSetting: Setting<ChooseOne> = {
  problems({ options }) {
    const right = [...options.keys()].filter((place) => options[place]!.right);
    const problems = optionProblems(options);
    if (right.length < 2) return problems;
    return [
      questionProblem(
        "several-right-options",
        `${right.length} right options`,
        "one, or choose-several",
        right,
      ),
      ...problems,
    ];
  },
  guesses: ({ options }) => optionGuesses(options),
};
