/** Canonical JSON by RFC 8785: the one text by which a value is hashed and signed, whoever wrote it down. */
import type { Json } from "./json.ts";

/**
 * Fields in the order of their names' UTF-16 units, no white space, numbers and texts as ECMAScript writes them. A field that is
 * undefined is left out, as `JSON.stringify` does. Throws a TypeError on what is no JSON: infinite numbers, lone surrogates.
 * By hand, because hashing a record's events is most of the work of checking it. O(size · log fields).
 */
export function canonicalText(value: Json): string {
  if (typeof value === "string") return textOf(value);
  if (typeof value === "number") return numberOf(value);
  if (typeof value === "boolean" || value === null) return String(value);
  if (typeof value !== "object") throw new TypeError(`${typeof value} is no JSON value`);
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(",")}]`;
  let fields = "";
  for (const name of Object.keys(value).sort()) {
    const field = (value as { readonly [name: string]: Json | undefined })[name];
    if (field !== undefined) fields += `${fields === "" ? "" : ","}${textOf(name)}:${canonicalText(field)}`;
  }
  return `{${fields}}`;
}

/** Printable ASCII but for the quotation mark and the backslash: written as it stands. */
const plain = /^[ !#-[\]-~]*$/;

function textOf(text: string): string {
  if (plain.test(text)) return `"${text}"`;
  if (/\p{Surrogate}/u.test(text)) throw new TypeError("half a letter (a lone surrogate) is no JSON");
  return JSON.stringify(text);
}

function numberOf(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`${value} is no JSON number`);
  return JSON.stringify(value);
}
