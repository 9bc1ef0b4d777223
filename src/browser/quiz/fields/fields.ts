/** The field of each kind of question. */
import type { Question, QuestionKind, QuestionOf } from "../../../engine/quiz/kinds.ts";
import type { Announce } from "../../page/announcer.ts";
import { arrangeField } from "./arrange-field.ts";
import { choiceField } from "./choice-field.ts";
import type { Field } from "./field.ts";
import { matchField } from "./match-field.ts";
import { pointField } from "./point-field.ts";
import { sortField } from "./sort-field.ts";
import { writtenField } from "./written-field.ts";

export interface FieldPlace {
  /** What the layout has drawn for the question. */
  readonly root: HTMLElement;
  readonly announce: Announce;
  /** The answer has changed in a way that fires no event of the page. */
  readonly changed: () => void;
}

type Rows = { readonly [Kind in QuestionKind]: (question: QuestionOf<Kind>, place: FieldPlace) => Field };

const rows: Rows = {
  "choose-one": ({ options }, { root }) => choiceField(options, root),
  "choose-several": ({ options }, { root }) => choiceField(options, root),
  number: (_question, { root }) => writtenField(root),
  arrange: (question, { root, announce, changed }) => arrangeField(question, root, announce, changed),
  match: (question, { root }) => matchField(question, root),
  text: (_question, { root }) => writtenField(root),
  point: (question, { root, changed }) => pointField(question, root, changed),
  sort: (question, { root }) => sortField(question, root),
  worked: (_question, { root }) => writtenField(root),
};

export function fieldOf(question: Question, place: FieldPlace): Field {
  const make = rows[question.kind] as (question: Question, place: FieldPlace) => Field;
  return make(question, place);
}
