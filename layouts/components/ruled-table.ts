/** A ruled table from rows and columns; a column in which no row says anything is left out. */
import { type Html, html } from "../html.ts";

export interface Column<Row> {
  readonly name: string;
  /** "head" names the row; "count" is a figure; "found" is left blank to write in; "mark" speaks for itself. */
  readonly kind?: "head" | "count" | "found" | "mark";
  /** undefined or "" where the row says nothing. */
  readonly value: (row: Row) => Html | string | undefined;
}

/** `kind` is the table's class; where `idOf` is given, a row can be led to. Each cell carries its column's name, for screens on which rows stand as entries. */
export function ruledTable<Row>(
  kind: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  idOf?: (row: Row) => string,
): Html {
  const shown = columns.filter(
    (column) => column.kind === "found" || rows.some((row) => says(column.value(row))),
  );
  return html`<table class="ruled ${kind}">
<thead><tr>${shown.map((column) => html`<th scope="col"${classOf(column)}>${column.name}</th>`)}</tr></thead>
<tbody>
${rows.map((row) => html`<tr${idOf && html` id="${idOf(row)}"`}>${shown.map((column) => cell(column, row))}</tr>\n`)}</tbody>
</table>
`;
}

function cell<Row>(column: Column<Row>, row: Row): Html {
  const value = column.value(row);
  if (column.kind === "head") return html`<th scope="row">${value}</th>`;
  if (column.kind !== undefined) return html`<td${classOf(column)}>${value}</td>`;
  return says(value) ? html`<td data-name="${column.name}">${value}</td>` : html`<td class="blank">—</td>`;
}

const says = (value: Html | string | undefined) => value !== undefined && value.toString() !== "";

const classOf = ({ kind }: { readonly kind?: string }) =>
  kind === "count" || kind === "found" ? html` class="${kind}"` : undefined;
