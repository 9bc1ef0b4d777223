import { t } from "../../words.ts";
import { problem } from "../problem.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

/** Nobody signs for themself: under none of the keys that are known to be theirs. */
export const selfSigned: Check = (signed, { mentors }, keys) => {
  const { statement } = signed;
  const own = new Set([
    statement.issuer,
    ...(mentors.get(statement.issuer) ?? []).flatMap(({ ownRecords }) => ownRecords),
  ]);
  const about = [
    statement.subject,
    ...(statement.kind === "new-key" ? [statement.oldKey] : []),
    ...(keys ?? []),
  ];
  if (!about.some((key) => own.has(key))) return undefined;
  return problem(
    "self-signed",
    t`${called(signed)} was signed by the person whom it is about; expected another mentor. Ask one to look and sign.`,
  );
};
