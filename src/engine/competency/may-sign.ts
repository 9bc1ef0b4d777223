/** What the programme lets a mentor sign on a day: asked before anything is signed, and of what was signed. */
import { t } from "../words.ts";
import { type Level, levels } from "./levels.ts";
import type { Mentor } from "./rules.ts";
import type { Statement } from "./sign-off.ts";

/** What is signed, as far as it matters who signs it. */
export type Signing =
  | { readonly kind: "new-key" }
  | { readonly kind: "observation"; readonly module: string }
  | { readonly kind: "sign-off"; readonly module: string; readonly level: Level };

/**
 * Why a mentor may not sign this on a day (YYYY-MM-DD), in words that end no sentence; undefined where they may. `rows` are all
 * that the programme has of their key, of which one is enough; there is at least one. O(rows).
 */
export function whyNotSign(rows: readonly Mentor[], signing: Signing, day: string): string | undefined {
  const reasons = rows.map((row) => reasonAgainst(row, signing, day));
  return reasons.includes(undefined) ? undefined : reasons[0];
}

function reasonAgainst(row: Mentor, signing: Signing, day: string): string | undefined {
  const { name, from, to, maySign, highestLevel } = row;
  if (day < from || (to !== undefined && day > to))
    return t`${name} is a mentor from ${from}${to === undefined ? "" : t` to ${to}`}, not on ${day}`;
  if (signing.kind === "new-key") return undefined;
  if (maySign !== "all" && !maySign.includes(signing.module))
    return t`${name} may sign ${maySign.join(", ") || t`nothing`}, not ${signing.module}`;
  if (signing.kind === "sign-off" && rank(signing.level) > rank(highestLevel))
    return t`${name} may sign up to "${highestLevel}", not "${signing.level}"`;
  return undefined;
}

const rank = (level: Level): number => levels.indexOf(level);

export function signingOf(statement: Statement): Signing {
  if (statement.kind === "new-key") return { kind: "new-key" };
  const { module } = statement;
  return statement.kind === "observation"
    ? { kind: "observation", module }
    : { kind: "sign-off", module, level: statement.level };
}
