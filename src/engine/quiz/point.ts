import { t } from "../words.ts";
import { type Option, optionGuesses, optionProblems, optionRemarks, readOption } from "./choice.ts";
import {
  type Asked,
  answered,
  isBlank,
  type Kind,
  type QuestionProblem,
  questionProblem,
  type Setting,
} from "./kind.ts";
import { none, whole } from "./ratio.ts";
import { centreOf, contains, isInside, type Shape } from "./shape.ts";
import { shuffle } from "./shuffle.ts";

export interface PointQuestion extends Asked {
  readonly kind: "point";
  readonly figure: { readonly file: string; readonly alt: string };
  /** Each with where it is in words: what a list names for those who do not point. */
  readonly places: readonly Place[];
}

export interface Place extends Option {
  readonly shape: Shape;
}

/** A place on a figure: a right one earns all, any other nothing. The answer is the place's number or its words. */
export const point: Kind<PointQuestion, number> = {
  read({ places }, given) {
    if (isBlank(given)) return { state: "blank" };
    const place = readOption(places, given);
    return place.ok ? answered(place.value) : { state: "unreadable", problem: place.problem };
  },
  judge({ places }, answer) {
    return { credit: places[answer]!.right ? whole : none, failsCritical: false };
  },
  /** Any one of the right places is enough, so that the others were not missed. */
  remarks({ places }, answer) {
    if (answer === undefined) return optionRemarks(places, new Set());
    const remarks = optionRemarks(places, new Set([answer]));
    return places[answer]!.right ? remarks.filter(({ verdict }) => verdict === "right") : remarks;
  },
  shown({ id, places }, seed) {
    return shuffle([...places.keys()], `${seed}/${id}`);
  },
};

export const pointSetting: Setting<PointQuestion> = {
  problems({ places }) {
    const problems = optionProblems(places).map((problem) => ({
      ...problem,
      code: codes[problem.code] ?? problem.code,
    }));
    const all = places.length > 0 && places.every(({ right }) => right);
    return [
      ...problems,
      ...(all ? [questionProblem("no-wrong-place", "only right places", "a wrong one, with its why:")] : []),
      ...outside(places),
      ...overlapping(places),
    ];
  },
  guesses: ({ places }) => optionGuesses(places),
};

/** What is said of options is said of places. */
const codes: Partial<Record<QuestionProblem["code"], QuestionProblem["code"]>> = {
  "no-right-option": "no-right-place",
  "too-few-options": "too-few-places",
  "equal-options": "equal-places",
  "wrong-option-without-why": "wrong-place-without-why",
};

function outside(places: readonly Place[]): QuestionProblem[] {
  return places.flatMap(({ text, shape }, place) =>
    isInside(shape)
      ? []
      : [
          questionProblem(
            "place-outside",
            `"${text}" beyond the edge of the figure`,
            "percentages from 0 to 100",
            [place],
          ),
        ],
  );
}

/** Whoever points at the middle of a place must have pointed at that one alone. */
function overlapping(places: readonly Place[]): QuestionProblem[] {
  return places.flatMap((one, place) => {
    const other = places.find((each, at) => at !== place && contains(each.shape, centreOf(one.shape)));
    if (other === undefined) return [];
    const found = t`the middle of "${one.text}" within "${other.text}"`;
    return [questionProblem("places-overlap", found, "places that lie beside one another", [place])];
  });
}
