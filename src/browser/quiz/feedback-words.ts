/** What is said about an answer, in sentences: a row for each kind of question. */

import type { Remark } from "../../engine/quiz/kind.ts";
import type { QuestionKind } from "../../engine/quiz/kinds.ts";
import type { Mark } from "../../engine/quiz/score.ts";
import { t } from "../../engine/words.ts";
import { capital, pairWords, sentence, type Told } from "../page/words.ts";

type Say = (remark: Remark) => string | Told;

/** An option is often a sentence, and brings its full stop with it. */
const quoted = ({ about: [text = ""] }: Remark): string => `“${text}”${/[.!?…]$/.test(text) ? "" : "."}`;
const reason = (text: string): string => (text === "" ? "" : ` ${sentence(capital(text))}`);
const because = ({ because }: Remark): string => reason(because);

const chosen: Readonly<Record<Remark["verdict"], Say>> = {
  right: (remark) => t`Right: ${quoted(remark)}${because(remark)}`,
  wrong: (remark) => t`Not right: ${quoted(remark)}${because(remark)}`,
  missed: (remark) => t`Right, and not chosen: ${quoted(remark)}${because(remark)}`,
};

const counted: Readonly<Record<Remark["verdict"], Say>> = {
  right: ({ about: [, expected = ""] }) => t`The answer is ${sentence(expected)}`,
  wrong: ({ about: [given = "", expected], because }) =>
    expected === undefined
      ? t`“${given}” can't be read: ${sentence(because)}`
      : t`${given}: ${sentence(because)} The answer is ${sentence(expected)}`,
  missed: ({ about: [expected = ""] }) => t`The answer is ${sentence(expected)}`,
};

const arranged: Readonly<Record<Remark["verdict"], Say>> = {
  right: () => t`This order is right.`,
  wrong: ({ about: [first = "", then], reasons = [] }) =>
    then === undefined ? t`“${first}” does not belong here.` : pairWords(first, then, reasons),
  missed: (remark) => t`Left out: ${quoted(remark)}`,
};

const placed: Readonly<Record<Remark["verdict"], Say>> = {
  right: ({ about: [item = "", right = ""], because: why }) => `“${item}”: ${right}.${reason(why)}`,
  wrong: ({ about: [item = "", given = "", right], because: why }) =>
    right === undefined
      ? t`“${item}” can't be read: ${sentence(why)}`
      : t`“${item}”: not “${given}”, but “${right}”.${reason(why)}`,
  missed: ({ about: [item = "", right = ""], because: why }) =>
    t`“${item}”: nothing given; it is “${right}”.${reason(why)}`,
};

const written: Readonly<Record<Remark["verdict"], Say>> = {
  right: ({ about: [, right = ""], because: why }) =>
    t`It is written “${right}”${why === "" ? "" : `; ${why}`}.`,
  wrong: ({ about: [given = "", right], because: why }) =>
    right === undefined
      ? t`“${given}” can't be read: ${sentence(why)}`
      : t`Not “${given}”, but “${right}”.${reason(why)}`,
  missed: ({ about: [right = ""] }) => t`The answer is “${right}”.`,
};

const rows: Readonly<Record<QuestionKind, Readonly<Record<Remark["verdict"], Say>>>> = {
  "choose-one": chosen,
  "choose-several": chosen,
  number: counted,
  arrange: arranged,
  match: placed,
  text: written,
  point: chosen,
  sort: placed,
  worked: counted,
};

/** Of a right answer, only what says more than that it is right. */
export function remarkLines(kind: QuestionKind, remarks: readonly Remark[], right: boolean): Told[] {
  const telling = remarks.filter(
    ({ because, about: [given, answer] }) =>
      !right || because !== "" || ((kind === "number" || kind === "worked") && given !== answer),
  );
  return telling.map((remark) => {
    const said = rows[kind][remark.verdict](remark);
    return typeof said === "string" ? { text: said, reasons: [] } : said;
  });
}

/** The verdict on a question in one line. */
export function verdictWords(mark: {
  right: boolean;
  answered: boolean;
  score: number;
  failedCritical: boolean;
  problem?: Mark["problem"];
}): string {
  const critical = mark.failedCritical ? t` This one is critical.` : "";
  if (mark.right) return t`Right.`;
  if (mark.problem !== undefined) return t`Not to be read.${critical}`;
  if (!mark.answered) return t`Not answered.${critical}`;
  return `${mark.score > 0 ? t`Partly right.` : t`Not right.`}${critical}`;
}
