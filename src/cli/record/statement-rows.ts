/** Statements as record check and record withdraw list them: with their ids, by which they can be withdrawn. */
import { lastDay } from "../../engine/competency/calendar.ts";
import type { FoundStatement } from "../../engine/competency/check-record.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import type { SignedStatement } from "../../engine/competency/statements.ts";

/** "sign-off, alone, on motor, revision 1" */
export function statementWords(statement: Statement): string {
  if (statement.kind === "new-key") return `new-key, which goes on for ${statement.oldKey}`;
  const ended = statement.kind === "sign-off" ? statement.level : statement.outcome;
  return `${statement.kind}, ${ended}, on ${statement.module}, revision ${statement.revision}`;
}

/** Two lines, indented: what, when and by whom; then the id, and why it does not count. */
export function statementLines({ signed, problems }: Pick<FoundStatement, "signed" | "problems">): string {
  const { statement, day } = signed;
  const counts = problems.length === 0 ? "" : `  (does not count: ${codesOf(problems).join(", ")})`;
  const what = `${statementWords(statement)}: for ${statement.subjectName}, ${day}, by ${statement.issuerName}`;
  return `  ${what}\n    ${statement.id}${counts}\n`;
}

/** The same as a program reads it; dates are days in the programme's time zone. */
export function statementJson({ signed, at, problems }: FoundStatement, timeZone: string) {
  const { statement } = signed;
  const { kind, id, subject, subjectName, issuer, issuerName } = statement;
  return {
    ...{ at, id, kind, ...about(statement), ...datesOf(signed, timeZone) },
    ...{ person: { name: subjectName, key: subject }, mentor: { name: issuerName, key: issuer } },
    problems: codesOf(problems),
  };
}

function about(statement: Statement) {
  if (statement.kind === "new-key") return { oldKey: statement.oldKey };
  const { module, revision } = statement;
  return statement.kind === "sign-off"
    ? { module, revision, level: statement.level }
    : { module, revision, outcome: statement.outcome };
}

const datesOf = ({ day, until }: SignedStatement, timeZone: string) => ({
  on: day,
  until: until === undefined ? undefined : lastDay(until, timeZone),
});

const codesOf = (problems: FoundStatement["problems"]) => [...new Set(problems.map(({ code }) => code))];
