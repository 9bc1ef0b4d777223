/** How the sums are printed: the answer first, then what it rests on. */
import type { Grounds } from "../../engine/workshop/grounds.ts";
import { type Call, type Output, printJson } from "../command.ts";

/** The answer in lines for people, or as data with `--json`; both with assumptions, warnings, sources and who decides. */
export function printAnswer(
  call: Call,
  output: Output,
  lines: readonly string[],
  data: Readonly<Record<string, unknown>>,
  grounds: Grounds,
): void {
  const { assumptions, warnings, sources, deferral } = grounds;
  if (call.flag("json")) {
    printJson(output, { ...data, assumptions, warnings, sources, deferral });
    return;
  }
  const blocks = [
    lines.join("\n"),
    ...list("Take care:", warnings),
    ...list("Assumed:", assumptions),
    `Sources: ${[...new Set(sources)].join("; ")}.`,
    deferral,
  ];
  output.out(`${blocks.join("\n\n")}\n`);
}

function list(title: string, items: readonly string[]): string[] {
  return items.length === 0 ? [] : [[title, ...items.map((item) => `  - ${item}`)].join("\n")];
}

/** A figure with its unit, as data. */
export function amount(value: number, unit: string): { readonly value: number; readonly unit: string } {
  return { value: tidy(value), unit };
}

/** Six figures: more would claim what no bench can measure. */
export function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
