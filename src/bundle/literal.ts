/** A text as a JavaScript literal, in single quotes, because JSON is full of double ones. */
export function asLiteral(json: string): string {
  return `'${json.replaceAll("\\", "\\\\").replaceAll("'", "\\'").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029")}'`;
}
