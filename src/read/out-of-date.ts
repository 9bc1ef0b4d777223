/** What the day does to content that nobody has changed. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Files of signed lists that ran out before `now`, without looking at their signatures: a site that was kept from before
 * does not tell of them.
 */
export function listsOutOfDate(contentDir: string, now: Date): string[] {
  return names(join(contentDir, "withdrawals"))
    .filter((name) => name.endsWith(".json") && endOf(join(contentDir, "withdrawals", name)) < now.getTime())
    .sort();
}

/** ms since 1970; NaN where there is none to be found. */
function endOf(file: string): number {
  try {
    return Date.parse(/"validUntil"\s*:\s*"([^"]*)"/.exec(readFileSync(file, "utf8"))?.[1] ?? "");
  } catch {
    return Number.NaN;
  }
}

function names(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
