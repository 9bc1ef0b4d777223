import { problemsWith } from "./checks/index.ts";
import { grouped } from "./grouped.ts";
import type { NewKey } from "./sign-off.ts";
import type { Situation } from "./situation.ts";
import type { SignedStatement } from "./statements.ts";

/**
 * The keys of a record's owner: the present one, and those from which mentors have signed it over, chain by chain. What was
 * done and signed under any of them counts. A statement counts where nothing speaks against it; that a mentor does
 * not sign over their own records is looked at for the two keys of each. O(statements).
 */
export function keysOf(
  owner: string,
  statements: Iterable<SignedStatement>,
  situation: Situation,
): ReadonlySet<string> {
  const sound = [...statements]
    .filter(isNewKey)
    .filter((signed) => problemsWith(signed, situation, undefined).length === 0);
  const bySubject = grouped(sound, ({ statement }) => statement.subject);
  const keys = new Set([owner]);
  // A set hands out what is added to it while it is gone through.
  for (const key of keys) for (const { statement } of bySubject.get(key) ?? []) keys.add(statement.oldKey);
  return keys;
}

const isNewKey = (signed: SignedStatement): signed is SignedStatement<NewKey> =>
  signed.statement.kind === "new-key";
