/** Diagnostics for people: the place, what is wrong, and a code frame. */
import type { Diagnostic, Place } from "../model/diagnostic.ts";

/** Colours a word where the output can. */
export type Paint = (word: string, as: "error" | "warning" | "quiet") => string;

/** One text for all diagnostics, a closing count included. `texts` gives the files' texts for the frames. */
export function reportText(
  diagnostics: readonly Diagnostic[],
  texts: ReadonlyMap<string, string>,
  paint: Paint = (word) => word,
): string {
  return [...reportBlocks(diagnostics, texts, paint), summary(diagnostics) + waitingWords(diagnostics)].join(
    "\n\n",
  );
}

/** A text for each diagnostic. */
export function reportBlocks(
  diagnostics: readonly Diagnostic[],
  texts: ReadonlyMap<string, string>,
  paint: Paint,
): string[] {
  return diagnostics.map((one) => {
    const head = `${place(one)}  ${paint(one.severity, one.severity)} ${paint(one.code, "quiet")}`;
    const other =
      one.other === undefined
        ? []
        : [`  ${place(one.other)}  ${one.other.message}`, ...frame(one.other, texts)];
    return [head, `  ${one.message}`, ...frame(one, texts), ...other].join("\n");
  });
}

/** A line of its own where checks had to be left out; else "". */
export const waitingWords = (diagnostics: readonly Diagnostic[]): string =>
  diagnostics.some(({ holdsUp }) => holdsUp)
    ? "\nSome checks wait until these are mended; they may find more."
    : "";

const place = ({ file, line, column }: Place): string => `${file}:${line}:${column}`;

/** "2 errors, 1 warning". */
export function summary(diagnostics: readonly Diagnostic[]): string {
  const { errors, warnings } = countSeverities(diagnostics);
  return `${counted(errors, "error")}, ${counted(warnings, "warning")}`;
}

/** "1 error", "2 errors". */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;

export function countSeverities(diagnostics: readonly Diagnostic[]): { errors: number; warnings: number } {
  const errors = diagnostics.filter(({ severity }) => severity === "error").length;
  return { errors, warnings: diagnostics.length - errors };
}

const widest = 100;

/** The line with a mark under the column; tabs show as arrows, long lines are cut to what stands round the column. */
function frame({ file, line, column }: Place, texts: ReadonlyMap<string, string>): string[] {
  const written = texts.get(file)?.split("\n")[line - 1]?.replace(/\r$/, "");
  if (written === undefined || written.trim() === "") return [];
  const from = Math.max(0, column - 1 - widest / 2);
  const shown = written.slice(from, from + widest).replace(/\t/g, "→");
  const gutter = String(line);
  return [`  ${gutter} | ${shown}`, `  ${" ".repeat(gutter.length)} | ${" ".repeat(column - 1 - from)}^`];
}
