/** A sign-off as a sheet of paper: who may do what, by whose word, until when, and how to check it. */

import { lastDay } from "../../engine/competency/calendar.ts";
import type { JudgedSignOff } from "../../engine/competency/support.ts";
import { shareWords } from "../../engine/quiz/score-words.ts";
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import type { Naming } from "./next-words.ts";
import type { Overview } from "./overview.ts";
import { codesOr } from "./sign-offs-view.ts";

export interface StatementOptions {
  readonly signOff: JudgedSignOff;
  readonly overview: Overview;
  readonly naming: Naming;
  readonly close: () => void;
}

const may = {
  "under eye": t`may do this work under a mentor’s eye`,
  alone: t`may do this work alone`,
  "may teach": t`may do this work alone, and teach it`,
} as const;

/** While it stands on the page, it alone is printed. Its heading can have the focus. */
export function statementView({ signOff, overview, naming, close }: StatementOptions): HTMLElement {
  const { signed, problems } = signOff;
  const { statement } = signed;
  const { programme, timeZone } = overview.situation.rules;
  const until = signed.until === undefined ? undefined : lastDay(signed.until, timeZone);
  const lines: readonly (readonly [string, string | undefined])[] = [
    [t`Module`, t`${statement.title}, revision ${statement.revision}`],
    [t`Signed by`, t`${statement.issuerName}, mentor of ${programme}`],
    [t`Signed on`, naming.day(signed.day)],
    [
      t`Holds until`,
      until === undefined ? t`it is withdrawn` : t`${naming.day(until)}, unless it is withdrawn before`,
    ],
    [
      t`Looked up`,
      `${naming.day(overview.situation.on)}, ${codesOr(problems, t`it holds`, t`it does not count`)}`,
    ],
    [t`Quiz`, statement.score === undefined ? undefined : shareWords(statement.score)],
    [t`Rests on`, statement.evidence.map(({ name }) => name).join("; ") || undefined],
    [t`In the mentor’s words`, statement.words || undefined],
    [t`Key of the mentor`, statement.issuer],
    [t`Key of the trainee`, statement.subject],
    [t`Digest`, signed.digest],
  ];
  return element(
    "section",
    { class: "statement", "aria-labelledby": "s_statement" },
    element(
      "header",
      { class: "title-block" },
      element(
        "div",
        { class: "title-block-title" },
        element("h2", { id: "s_statement", tabindex: "-1" }, t`Statement of sign-off`),
        element("p", {}, programme),
      ),
    ),
    element(
      "p",
      { class: "statement-says" },
      element("strong", {}, statement.subjectName),
      ` ${may[statement.level]}: `,
      element("strong", {}, statement.title),
      ".",
    ),
    element(
      "dl",
      { class: "lines facts" },
      ...lines.flatMap(([name, value]) => (value === undefined ? [] : [line(name, value)])),
    ),
    element("p", { class: "small" }, howToCheck),
    element("p", { class: "small" }, deferral),
    element(
      "div",
      { class: "actions" },
      button(t`Print`, () => window.print(), { class: "is-main" }),
      button(t`Close`, close),
    ),
  );
}

const line = (name: string, value: string): HTMLElement =>
  element("div", {}, element("dt", {}, name), element("dd", {}, value));

const howToCheck = t`This sheet is a copy for people to read and proves nothing by itself. The signed statement is in the trainee’s record file; whoever wants to be sure opens that on the programme’s site, at Check a sign-off.`;
const deferral = t`It speaks of this module on this revision and of nothing else. Local rules, licensed practice, the maker’s instructions and whoever answers for the place decide what may be done there.`;
