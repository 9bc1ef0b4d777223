/** A template tag for HTML: whatever is put into it is escaped, unless it is HTML already. */

/** A piece of HTML that may be put into a page as it is. */
export class Html {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  toString(): string {
    return this.text;
  }
}

export type Value = Html | string | number | boolean | null | undefined | readonly Value[];

const entities: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const special = /[&<>"']/;
const specials = /[&<>"']/g;

/** Escapes a text for HTML, in an element as in a quoted attribute. */
export function escapeHtml(text: string): string {
  return special.test(text) ? text.replace(specials, (sign) => entities[sign]!) : text;
}

/** Marks a text as HTML. Only for what was escaped or rendered by us. */
export function raw(text: string): Html {
  return new Html(text);
}

/** Builds HTML. Lists are joined; undefined, null, true and false stand for nothing. */
export function html(strings: TemplateStringsArray, ...values: readonly Value[]): Html {
  let text = strings[0]!;
  for (let i = 0; i < values.length; i++) text += textOf(values[i]) + strings[i + 1]!;
  return new Html(text);
}

/** Joins pieces with a separator between them, leaving out those that stand for nothing. */
export function join(values: readonly Value[], separator: Value): Html {
  return new Html(
    values
      .map(textOf)
      .filter((text) => text !== "")
      .join(textOf(separator)),
  );
}

/** An attribute with its leading space: nothing for undefined and false, the bare name for true. */
export function attribute(name: string, value: string | number | boolean | undefined): Html {
  if (value === undefined || value === false) return nothing;
  return new Html(value === true ? ` ${name}` : ` ${name}="${escapeHtml(String(value))}"`);
}

export const nothing = new Html("");

function textOf(value: Value): string {
  if (typeof value === "string") return escapeHtml(value);
  if (value instanceof Html) return value.text;
  if (typeof value === "number") return String(value);
  if (value === undefined || value === null || typeof value === "boolean") return "";
  let text = "";
  for (const each of value) text += textOf(each);
  return text;
}
