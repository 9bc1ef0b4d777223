import { arrange } from "./arrange.ts";
import { chooseOne } from "./choose-one.ts";
import { chooseSeveral } from "./choose-several.ts";
import type { Asked, Kind } from "./kind.ts";
import { match } from "./match.ts";
import { number } from "./number.ts";
import { point } from "./point.ts";
import { sort } from "./sort.ts";
import { text } from "./text.ts";
import { worked } from "./worked.ts";

/** Every kind of question, one row each. The types below follow from the table. */
export const kinds = {
  "choose-one": chooseOne,
  "choose-several": chooseSeveral,
  number,
  arrange,
  match,
  text,
  point,
  sort,
  worked,
};

type Kinds = typeof kinds;

export type QuestionKind = keyof Kinds;

export type QuestionOf<Name extends QuestionKind> =
  Kinds[Name] extends Kind<infer Question extends Asked, infer _Answer> ? Question : never;

/** A question of any kind. */
export type Question = { [Name in QuestionKind]: QuestionOf<Name> }[QuestionKind];

/** The row of a question's kind; what one of its functions gives is only handed on to another of the same row. */
export function kindOf(question: Question): Kind<Question, unknown> {
  return kinds[question.kind];
}
