/** A ruled table; on a phone each row becomes an entry, whose cells say what they are. */
import { type Content, element } from "../page/element.ts";

export interface Row {
  /** What the row is about. */
  readonly head: readonly Content[];
  readonly cells: readonly (readonly Content[])[];
  /** Whether something is wrong with it. */
  readonly isFaulty?: boolean;
}

/** `names` begins with that of the head; a row has a cell for each of the others. */
export function table(kind: string, names: readonly string[], rows: readonly Row[]): HTMLTableElement {
  const heads = names.map((name) => element("th", { scope: "col" }, name));
  return element(
    "table",
    { class: `ruled ${kind}` },
    element("thead", {}, element("tr", {}, ...heads)),
    element("tbody", {}, ...rows.map((row) => tableRow(row, names))),
  );
}

const tableRow = ({ head, cells, isFaulty }: Row, names: readonly string[]): HTMLElement =>
  element(
    "tr",
    { class: isFaulty === true ? "is-faulty" : undefined },
    element("th", { scope: "row" }, ...head),
    ...cells.map((cell, at) => element("td", { "data-name": names[at + 1] }, ...cell)),
  );

/** Short statements with their names; what is undefined is left out. */
export function facts(lines: readonly (readonly [name: string, value: string | undefined])[]): HTMLElement {
  const shown = lines.flatMap(([name, value]) =>
    value === undefined ? [] : [element("div", {}, element("dt", {}, name), element("dd", {}, value))],
  );
  return element("dl", { class: "lines facts" }, ...shown);
}
