/** What is filled in, as the query of an address: `?torque.thread=M6&torque.class=8.8`. */

export type Values = ReadonlyMap<string, string>;

/** No field takes more; an address may have been written by anybody. */
const longestValue = 200;

/** The query with what is filled in, by the sum's id; "" where nothing is. */
export function queryOf(filled: ReadonlyMap<string, Values>): string {
  const query = new URLSearchParams();
  for (const [sum, values] of filled)
    for (const [field, value] of values) if (value.trim() !== "") query.append(`${sum}.${field}`, value);
  const text = query.toString();
  return text === "" ? "" : `?${text}`;
}

/** What a query fills in. What is named otherwise is left out, and of a field named twice the first counts. */
export function valuesOf(query: string): Map<string, Map<string, string>> {
  const filled = new Map<string, Map<string, string>>();
  for (const [name, value] of new URLSearchParams(query)) {
    const [, sum, field] = /^([a-z-]+)\.([a-z-]+)$/.exec(name) ?? [];
    if (sum === undefined || field === undefined) continue;
    const values = filled.get(sum) ?? new Map<string, string>();
    if (!values.has(field)) values.set(field, value.slice(0, longestValue));
    filled.set(sum, values);
  }
  return filled;
}
