/** What a file comes to, in words: first whether it holds, then what does not, then what does. */

import { lastDay } from "../../engine/competency/calendar.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import { t } from "../../engine/words.ts";
import { evidenceView } from "../opened/evidence-view.ts";
import type { Opened, OpenedList, OpenedRecord, OpenedStatement } from "../opened/open-file.ts";
import { problemList } from "../opened/problem-list.ts";
import { judgedIn, onWhat, saysWhat, statementsView } from "../opened/statements-view.ts";
import { facts } from "../opened/table.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";
import { shortKey } from "../record/facts-view.ts";
import type { Naming } from "../record/next-words.ts";

export interface VerdictOptions {
  readonly file: string;
  readonly opened: Opened;
  readonly naming: Naming;
  /** IANA name. */
  readonly timeZone: string;
  /** Of the verdicts on the page, which one: no two headings have one id. */
  readonly place: number;
}

/** Its heading can have the focus. */
export function verdictView({ file, opened, naming, timeZone, place }: VerdictOptions): HTMLElement {
  const isOk = opened.problems.length === 0;
  const id = `s_verdict-${place}`;
  return element(
    "section",
    { class: "group verdict-of-file", "aria-labelledby": id },
    element("h2", { id, tabindex: "-1" }, `${headings[opened.kind](isOk)}: ${file}`),
    element("p", { class: isOk ? "holds" : "warning" }, summary(opened)),
    isOk || opened.kind === "statements" ? undefined : problemList(opened.problems),
    ...(opened.kind === "record" ? ofRecord(opened, naming, timeZone) : []),
    ...(opened.kind === "statement"
      ? [element("h3", {}, t`What it says`), factsOf(opened, naming, timeZone)]
      : []),
    ...(opened.kind === "statements" ? ofList(opened, naming, timeZone) : []),
  );
}

const headings: { readonly [Kind in Opened["kind"]]: (isOk: boolean) => string } = {
  record: (isOk) => (isOk ? t`All of it adds up` : t`Not all of it adds up`),
  statement: (isOk) => (isOk ? t`It holds` : t`It does not hold`),
  statements: (isOk) => (isOk ? t`All of it holds` : t`Not all of it holds`),
  nothing: () => t`This can’t be relied on`,
};

function summary(opened: Opened): string {
  const { kind, problems } = opened;
  if (kind === "nothing") return t`Nothing of this file counts.`;
  if (problems.length > 0)
    return t`${counted(problems.length, "thing is", "things are")} wrong with it. Below stands each part with what it is worth by itself.`;
  if (kind === "statements")
    return t`The file holds ${opened.statements.length} signed statements. The signature of each is right, and the mentor may sign it. What they rest on lies in the trainee’s record, which was not given: to have that looked at too, choose the record.`;
  return kind === "record"
    ? t`The file is as its owner saved it. Every signature in it is right, and whatever can be marked again comes to what it claims.`
    : t`The signature is right, and the mentor may sign it. What it rests on lies in the trainee’s record, which was not given: to have that looked at too, choose the record.`;
}

function ofRecord({ overview, written }: OpenedRecord, naming: Naming, timeZone: string) {
  const { record, situation } = overview;
  const signed = statementsView(judgedIn(overview), naming, timeZone);
  const evidence = evidenceView(overview, naming);
  return [
    element("h3", {}, t`Whose it is`),
    facts([
      [t`Name`, t`${record.name} (as they want to be called; the key counts)`],
      [t`Key`, record.owner],
      [t`Saved`, written === undefined ? undefined : naming.day(written.slice(0, 10))],
      [t`Holds`, counted(record.events.length, "entry", "entries")],
      [t`Looked at`, naming.day(situation.on)],
    ]),
    element("h3", {}, t`What mentors have signed`),
    signed ?? element("p", {}, t`Nothing yet.`),
    element("h3", {}, t`What they did by themselves`),
    evidence ?? element("p", {}, t`Nothing yet.`),
  ];
}

/** Each of several statements under a heading that says what it is; of what can't be read, why. */
const ofList = ({ statements }: OpenedList, naming: Naming, timeZone: string): HTMLElement[] =>
  statements.flatMap((each, place) =>
    each.kind === "nothing"
      ? [element("h3", {}, t`Number ${place + 1}: this can’t be relied on`), problemList(each.problems)]
      : [
          element("h3", {}, t`Number ${place + 1}: ${saysWhat(each.signed.statement)}`),
          ...(each.problems.length === 0 ? [] : [problemList(each.problems)]),
          factsOf(each, naming, timeZone),
        ],
  );

function factsOf({ signed, on, problems }: OpenedStatement, naming: Naming, timeZone: string): HTMLElement {
  const { statement, until, day } = signed;
  const last = until === undefined ? undefined : naming.day(lastDay(until, timeZone));
  return facts([
    [t`For`, t`${statement.subjectName}, key ${shortKey(statement.subject)}`],
    [t`What`, saysWhat(statement)],
    [t`Of`, onWhat(statement)],
    [t`Signed by`, statement.issuerName],
    [t`Signed on`, naming.day(day)],
    [t`Holds until`, last ?? t`it is withdrawn`],
    [t`Looked at`, `${naming.day(on)}: ${problems.length === 0 ? t`it holds` : t`it does not hold`}`],
    [t`Rests on`, restsOn(statement)],
    [t`Words`, statement.kind === "new-key" ? undefined : statement.words || undefined],
    [t`Key of the mentor`, statement.issuer],
    [t`Key of the trainee`, statement.subject],
    [t`Digest`, signed.digest],
  ]);
}

const restsOn = (statement: Statement): string | undefined =>
  statement.kind === "sign-off"
    ? statement.evidence.map(({ name }) => name).join("; ") || undefined
    : undefined;
