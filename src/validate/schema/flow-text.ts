/** A value on one line, as an author would write it in YAML: text without quotes where it can do without. */
export function flowText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flowText).join(", ")}]`;
  if (typeof value === "object" && value !== null)
    return `{${Object.entries(value)
      .map(([name, entry]) => `${flowText(name)}: ${flowText(entry)}`)
      .join(", ")}}`;
  return typeof value === "string" && isPlain(value) ? value : JSON.stringify(value);
}

/** Text that no reader of YAML takes for anything else: begins with a letter, has no sign of YAML, is no word that means a truth. */
const isPlain = (text: string): boolean =>
  /^\p{L}[\p{L}\d ./’-]*[\p{L}\d./’]?$/u.test(text) &&
  !text.endsWith(" ") &&
  !/^(true|false|null|yes|no|on|off|y|n)$/i.test(text);
