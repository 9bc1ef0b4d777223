/** What a statement is called in messages. */
import { t } from "../../words.ts";
import type { SignedStatement } from "../statements.ts";

const kinds = { "sign-off": t`sign-off`, observation: t`observation`, "new-key": t`statement of a new key` };

/** "The sign-off of Jo on spring-motor (revision 3) by A. Mentor, 2026-11-27". */
export function called({ statement, day }: SignedStatement): string {
  const on = "module" in statement ? t` on ${statement.module} (revision ${statement.revision})` : "";
  return t`The ${kinds[statement.kind]} of ${statement.subjectName}${on} by ${statement.issuerName}, ${day},`;
}
