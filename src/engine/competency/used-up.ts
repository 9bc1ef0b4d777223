import { isUsable, type Judged } from "./judged.ts";
import { levels } from "./levels.ts";
import type { SignOff } from "./sign-off.ts";

/**
 * The date up to which observations are used up: that of the last sign-off at this level or a higher one on an earlier day. To
 * renew a sign-off, or to win back one that was withdrawn, one is watched again. Sign-offs that never held use nothing up.
 */
export function usedUpBy(
  { statement, day }: { readonly statement: Pick<SignOff, "level">; readonly day: string },
  earlier: readonly Judged[],
): string {
  const days = earlier
    .filter(
      ({ signed, problems }) =>
        signed.statement.kind === "sign-off" &&
        levels.indexOf(signed.statement.level) >= levels.indexOf(statement.level) &&
        signed.day < day &&
        isUsable(problems, ["lapsed", "status-list", "withdrawn", "revision"]),
    )
    .map(({ signed }) => signed.day);
  return days.sort().at(-1) ?? "";
}
