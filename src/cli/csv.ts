/** Tables as CSV (RFC 4180), for spreadsheets. */

export type Cell = string | number | null;

function csvCell(value: Cell): string {
  const text = value === null ? "" : String(value);
  // A cell that begins like a formula is made harmless for spreadsheets.
  const safe = /^[=+\-@\t\r]/.test(text) && typeof value === "string" ? `'${text}` : text;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

export const csvOf = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(",")}\n`).join("");
