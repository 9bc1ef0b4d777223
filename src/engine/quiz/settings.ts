import { arrangeSetting } from "./arrange.ts";
import { chooseOneSetting } from "./choose-one.ts";
import { chooseSeveralSetting } from "./choose-several.ts";
import type { Setting } from "./kind.ts";
import type { Question, QuestionKind, QuestionOf } from "./kinds.ts";
import { matchSetting } from "./match.ts";
import { numberSetting } from "./number.ts";
import { pointSetting } from "./point.ts";
import { sortSetting } from "./sort.ts";
import { textSetting } from "./text.ts";
import { workedSetting } from "./worked.ts";

/** What there is to know about setting questions, one row each kind. */
const settings: { readonly [Name in QuestionKind]: Setting<QuestionOf<Name>> } = {
  "choose-one": chooseOneSetting,
  "choose-several": chooseSeveralSetting,
  number: numberSetting,
  arrange: arrangeSetting,
  match: matchSetting,
  text: textSetting,
  point: pointSetting,
  sort: sortSetting,
  worked: workedSetting,
};

/** The row of a question's kind. */
export function settingOf(question: Question): Setting<Question> {
  return settings[question.kind] as Setting<Question>;
}
