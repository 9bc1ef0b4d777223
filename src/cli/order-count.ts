/** What `order --count` says, with a word on what each figure means. */
import { factorial } from "../engine/procedure/big-numbers.ts";
import type { OrderCount } from "../engine/procedure/count-orders.ts";

/** Rows of figure and meaning, for people. */
export function countWords({ steps, width, height, orders, reason }: OrderCount): string {
  const rows: [string, string, string][] = [
    ["steps", grouped(BigInt(steps)), ""],
    ["width", grouped(BigInt(width)), "the most steps of which none has to come before another"],
    ["height", grouped(BigInt(height)), "the most steps that have to follow one another"],
  ];
  if (orders === null) return `${table(rows)}\norders  not counted: ${reason}`;
  rows.push(
    ["orders", grouped(orders), "right ones, of all in which the steps could be put"],
    ["chance", oddsWords(orders, factorial(steps)), "that an order drawn by lot is right"],
  );
  return table(rows);
}

function table(rows: readonly (readonly [string, string, string])[]): string {
  const wide = (column: 0 | 1): number => Math.max(...rows.map((row) => row[column].length));
  const [names, figures] = [wide(0), wide(1)];
  return rows
    .map(([name, figure, meaning]) =>
      `${name.padEnd(names)}  ${figure.padEnd(figures)}  ${meaning}`.trimEnd(),
    )
    .join("\n");
}

/** "1 in 6", "1 in 2.5", "1 in 4.0e30": rounded to what a person takes in, for 0 < part ≤ whole. */
export function oddsWords(part: bigint, whole: bigint): string {
  const tenths = (whole * 10n + part / 2n) / part;
  if (tenths < 100n && tenths % 10n !== 0n) return `1 in ${Number(tenths) / 10}`;
  return `1 in ${grouped((whole + part / 2n) / part)}`;
}

/** Digits in threes, or two figures and a power of ten from ten million on. */
export function grouped(value: bigint): string {
  const digits = String(value);
  if (digits.length <= 7) return value.toLocaleString("en");
  const rounded = String((BigInt(digits.slice(0, 3)) + 5n) / 10n);
  return `${rounded[0]}.${rounded[1]}e${digits.length - 1 + rounded.length - 2}`;
}
