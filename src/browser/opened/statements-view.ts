/** What mentors have signed in a record: who, for whom, what, until when, and whether it holds. */

import { lastDay } from "../../engine/competency/calendar.ts";
import { outcomeNames } from "../../engine/competency/names.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import type { SignedStatement } from "../../engine/competency/statements.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { shortKey } from "../record/facts-view.ts";
import { levelWords } from "../record/log-words.ts";
import type { Naming } from "../record/next-words.ts";
import type { Overview } from "../record/overview.ts";
import { type Row, table } from "./table.ts";

export interface JudgedStatement {
  readonly signed: SignedStatement;
  readonly problems: readonly RecordProblem[];
}

/** Sign-offs are held against their evidence as well. By time, the newest first. */
export function judgedIn({ assessed, signOffs }: Overview): JudgedStatement[] {
  const others = assessed.judged.filter(({ signed }) => signed.statement.kind !== "sign-off");
  return [...signOffs, ...others].sort((a, b) => b.signed.from - a.signed.from);
}

/** Undefined where there is none. */
export function statementsView(
  judged: readonly JudgedStatement[],
  naming: Naming,
  timeZone: string,
): HTMLElement | undefined {
  if (judged.length === 0) return undefined;
  const rows = judged.map((each) => row(each, naming, timeZone));
  return table("statements", [t`What was signed`, t`For`, t`Signed by`, t`Until`, t`Holds`], rows);
}

function row({ signed, problems }: JudgedStatement, naming: Naming, timeZone: string): Row {
  const { statement, until, day } = signed;
  const reasons = problems.map(({ code, message }) =>
    element("small", {}, element("code", {}, code), `: ${message}`),
  );
  return {
    head: [saysWhat(statement), element("small", {}, onWhat(statement))],
    cells: [
      [statement.subjectName],
      [`${statement.issuerName}, ${naming.day(day)}`],
      [until === undefined ? t`no end` : naming.day(lastDay(until, timeZone))],
      [problems.length === 0 ? t`yes` : t`no`, ...reasons],
    ],
    isFaulty: problems.length > 0,
  };
}

/** "Sign-off: may work alone", "Observation: unaided", "New key". */
export function saysWhat(statement: Statement): string {
  switch (statement.kind) {
    case "sign-off":
      return t`Sign-off, ${levelWords[statement.level]}`;
    case "observation":
      return t`Observation, ${outcomeNames[statement.outcome]}`;
    case "new-key":
      return t`A new key`;
  }
}

export const onWhat = (statement: Statement): string =>
  statement.kind === "new-key"
    ? t`goes on for ${shortKey(statement.oldKey)}`
    : t`${statement.title}, revision ${statement.revision}`;
