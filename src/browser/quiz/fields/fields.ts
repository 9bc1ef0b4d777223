/** The field of each kind of question. */
import type { Question, QuestionKind, QuestionOf } from "../../../engine/quiz/kinds.ts";
import type { Announce } from "../../page/announcer.ts";
import { arrangeField } from "./arrange-field.ts";
import { choiceField } from "./choice-field.ts";
import type { Field } from "./field.ts";
import { numberField } from "./number-field.ts";

export interface FieldPlace {
  /** What the layout has drawn for the question. */
  readonly root: HTMLElement;
  readonly announce: Announce;
  /** The answer has changed in a way that fires no event of the page. */
  readonly changed: () => void;
}

type Rows = { readonly [Kind in QuestionKind]: (question: QuestionOf<Kind>, place: FieldPlace) => Field };

const rows: Rows = {
  "choose-one": (question, { root }) => choiceField(question, root),
  "choose-several": (question, { root }) => choiceField(question, root),
  number: (_question, { root }) => numberField(root),
  arrange: (question, { root, announce, changed }) => arrangeField(question, root, announce, changed),
};

export function fieldOf(question: Question, place: FieldPlace): Field {
  const make = rows[question.kind] as (question: Question, place: FieldPlace) => Field;
  return make(question, place);
}
