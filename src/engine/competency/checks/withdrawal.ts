import { t } from "../../words.ts";
import { statusListId } from "../credential.ts";
import { readInstant } from "../instant.ts";
import { problem } from "../problem.ts";
import { isOver, type Situation, type StatusList } from "../situation.ts";
import type { SignedStatement } from "../statements.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

const listsOf = ({ lists, rules }: Situation, { statement: { issuer } }: SignedStatement) =>
  (lists.get(issuer) ?? []).filter(({ id }) => id === statusListId(rules.identifier, issuer));

/** What any list has withdrawn stays withdrawn, so that an older list handed in beside it takes nothing back. */
export const withdrawn: Check = (signed, situation) =>
  listsOf(situation, signed).some((list) => list.isSet(signed.statement.statusIndex))
    ? problem(
        "withdrawn",
        t`${called(signed)} was withdrawn: the mentor's list of withdrawals names it. It no longer counts; ask the mentor why, and what to do.`,
      )
    : undefined;

/** Only a list in date can say that it is not withdrawn. Of nobody's mentor there is none. */
export const statusList: Check = (signed, situation) => {
  if (!situation.mentors.has(signed.statement.issuer)) return undefined;
  const lists = listsOf(situation, signed);
  if (lists.some((list) => isInDate(list, situation))) return undefined;
  return problem("status-list", t`${called(signed)} can't be confirmed: ${whyNot(lists.at(-1), situation)}`);
};

function isInDate({ validUntil }: StatusList, { listsEnd }: Situation): boolean {
  const until = readInstant(validUntil);
  return until !== undefined && !isOver(until, listsEnd);
}

function whyNot(list: StatusList | undefined, { on }: Situation): string {
  if (list === undefined)
    return t`there is no list of what its mentor has withdrawn. Expected the programme to publish one with its site: look there again, or ask the coordinator to make it (record withdraw).`;
  return t`the list of what its mentor has withdrawn holds until ${list.validUntil}, and does not reach the end of ${on}. Get the newest one from the programme's site, or ask the coordinator to have it signed again.`;
}
