/** How much is free in the order of a module's steps, in words. */
import { type OrderCount, quickDownSetLimit } from "../../src/engine/procedure/count-orders.ts";
import { line, lines } from "../components/lines.ts";
import { type Html, html, join, nothing, raw } from "../html.ts";
import { counted } from "../words.ts";

export function orderFigures(figures: OrderCount): Html {
  const { steps, width, height } = figures;
  return (
    lines([
      line("Steps", String(steps)),
      line("Right orders", rightOrders(figures)),
      line("Side by side", sideBySide(width)),
      line("Longest chain", longestChain(height, steps)),
    ]) ?? nothing
  );
}

function rightOrders({ orders }: OrderCount): Html | string {
  if (orders === null) {
    const most = quickDownSetLimit.toLocaleString("en");
    return `Too many to count: the work can stand half done in more than ${most} ways.`;
  }
  if (orders === 1n) return "Only one: the written one.";
  return html`${exactly(orders)}, the written one among them. Each of them works.`;
}

/** A longer number says no more than how many digits it has. */
const mostDigits = 45;

/** All digits in threes, so that a line may end between two of them. */
function exactly(value: bigint): Html | string {
  const digits = String(value).length;
  if (digits > mostDigits) return `A number of ${digits.toLocaleString("en")} digits`;
  return join(value.toLocaleString("en").split(","), raw(",<wbr>"));
}

const sideBySide = (width: number): string =>
  width === 1
    ? "No two steps could be done side by side."
    : `At most ${counted(width, "step")} could be done side by side, by as many hands.`;

function longestChain(height: number, steps: number): string {
  if (height === 1) return "No step has to wait for another.";
  const all = height === steps ? ", which is all of them" : "";
  return `The longest chain is ${counted(height, "step")}${all}: each has to wait for the one before it.`;
}
