/** How much is free in the order of a module's steps, in words. */

import { type OrderCount, quickDownSetLimit } from "../../src/engine/procedure/count-orders.ts";
import { language, t } from "../../src/engine/words.ts";
import { line, lines } from "../components/lines.ts";
import { type Html, html, join, nothing } from "../html.ts";
import { counted } from "../words.ts";

export function orderFigures(figures: OrderCount): Html {
  const { steps, width, height } = figures;
  return (
    lines([
      line(t`Steps`, String(steps)),
      line(t`Right orders`, rightOrders(figures)),
      line(t`Side by side`, sideBySide(width)),
      line(t`Longest chain`, longestChain(height, steps)),
    ]) ?? nothing
  );
}

function rightOrders({ orders }: OrderCount): Html | string {
  if (orders === null) {
    const most = quickDownSetLimit.toLocaleString(language);
    return t`Too many to count: the work can stand half done in more than ${most} ways.`;
  }
  if (orders === 1n) return t`Only one: the written one.`;
  return html`${exactly(orders)}, the written one among them. Each of them works.`;
}

/** A longer number says no more than how many digits it has. */
const mostDigits = 45;

/** All digits in threes, so that a line may end between two of them. */
function exactly(value: bigint): Html | string {
  const digits = String(value).length;
  if (digits > mostDigits) return t`A number of ${digits.toLocaleString(language)} digits`;
  const parts = new Intl.NumberFormat(language).formatToParts(value);
  return join(
    parts.map(({ type, value: text }) => (type === "group" ? html`${text}<wbr>` : text)),
    "",
  );
}

const sideBySide = (width: number): string =>
  width === 1
    ? t`No two steps could be done side by side.`
    : t`At most ${counted(width, "step")} could be done side by side, by as many hands.`;

function longestChain(height: number, steps: number): string {
  if (height === 1) return t`No step has to wait for another.`;
  const all = height === steps ? t`, which is all of them` : "";
  return t`The longest chain is ${counted(height, "step")}${all}: each has to wait for the one before it.`;
}
