/** What the dry run says, in sentences. */

import type { Pair } from "../../engine/procedure/precedence.ts";
import type { RunSummary } from "../../engine/procedure/run-summary.ts";
import type { TrayAccount } from "../../engine/procedure/tray-account.ts";
import { t } from "../../engine/words.ts";
import { counted, sentence } from "../page/words.ts";

/** Where two steps work on many things alike, a few of them say why. */
const mostReasons = 2;

export type TitleOf = (step: string) => string;

/** "“Lift the lid” comes first: the lid covers the belt." For a pair further up the way, both its steps are named. */
export function pairWords({ first, then, because }: Pair, tried: string, title: TitleOf): string {
  const order =
    then === tried
      ? t`“${title(first)}” comes first`
      : t`“${title(first)}” comes before “${title(then)}”, and that before this`;
  const told = because.slice(0, mostReasons);
  const more = because.length > mostReasons ? [t`and ${because.length - mostReasons} more`] : [];
  return sentence(`${order}: ${[...told, ...more].join("; ")}`);
}

/** "14 on the tray, 2 slack"; "tray empty". */
export function trayWords({ total, slack }: TrayAccount): string {
  const loose = slack.reduce((sum, { count }) => sum + count, 0);
  return [total === 0 ? t`tray empty` : t`${total} on the tray`, loose === 0 ? "" : t`${loose} slack`]
    .filter((part) => part !== "")
    .join(", ");
}

/** "once", "twice", "5 times". */
export function times(count: number): string {
  return [t`never`, t`once`, t`twice`][count] ?? t`${count} times`;
}

export function summaryHeadline({ refusals, stops }: RunSummary): string {
  if (stops > 0) return t`Done, but not safely yet`;
  return refusals === 0 ? t`Done without a refusal` : t`Done`;
}

/** `written` are the steps in the order of the operation sheet. */
export function summaryDetail({ done, refusals, stops }: RunSummary, written: readonly string[]): string {
  const order = done.every((step, place) => step === written[place])
    ? t`Your order is that of the operation sheet.`
    : t`Your order is not that of the operation sheet, and works just as well.`;
  const faults = [
    refusals > 0 ? t`${counted(refusals, "try", "tries")} came too early` : "",
    stops > 0 ? `${counted(stops, "critical stop")}` : "",
  ].filter((part) => part !== "");
  const told = faults.length === 0 ? "" : t` On the way: ${faults.join(", ")}.`;
  return t`All ${counted(done.length, "step")} are done. ${order}${told}`;
}
