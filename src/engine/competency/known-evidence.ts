/** The evidence of a record, as sign-offs list it. */
import type { Assessed } from "./assessed.ts";
import { isUsable, statementKey } from "./judged.ts";
import { once } from "./once.ts";
import type { Digest } from "./release.ts";
import type { ReadStatement } from "./statements.ts";

/** Whether a piece of evidence speaks for a sign-off, by the digest under which it is listed; undefined of what is not there. */
export type Known = (digest: Digest) => boolean | undefined;

/** O(events). A mentor's statement is listed by its event or by itself. */
export function knownEvidence({ events, read, rescored, judged }: Assessed): Known {
  const known = new Map(events.map(({ id }) => [id, true]));
  for (const [id, marked] of rescored) known.set(id, marked.ok);
  const speaks = new Map(
    judged.map(({ signed, problems }) => [
      statementKey(signed),
      isUsable(problems, ["lapsed", "status-list"]),
    ]),
  );
  const speaksFor = (each: ReadStatement): boolean =>
    each.ok && speaks.get(statementKey(each.signed)) === true;
  for (const [id, each] of read) known.set(id, speaksFor(each));
  const byItself = once(
    () =>
      new Map(
        [...read.values()].flatMap((each) =>
          each.ok ? [[each.signed.digest, speaksFor(each)] as const] : [],
        ),
      ),
  );
  return (digest) => known.get(digest) ?? byItself().get(digest);
}
