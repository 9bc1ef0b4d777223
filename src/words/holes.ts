/**
 * A template literal as one string: each `${…}` in it is one character of a private area, a hole. So texts can be searched
 * and cut without losing what belongs where.
 */

const first = 0xe000;
const last = 0xf8ff;
const holePattern = /[\ue000-\uf8ff]/g;

/** The character that stands for the expression with this number. */
export const hole = (index: number): string => String.fromCharCode(first + index);

/** The number of the expression that a character stands for; undefined for a character of the text. */
export function holeAt(sign: string): number | undefined {
  const code = sign.charCodeAt(0);
  return code >= first && code <= last ? code - first : undefined;
}

export const holesIn = (text: string): number[] =>
  (text.match(holePattern) ?? []).map((sign) => holeAt(sign)!);

/** The text with something else in the place of each hole. */
export const fillHoles = (text: string, write: (index: number) => string): string =>
  text.replace(holePattern, (sign) => write(holeAt(sign)!));

export const withoutHoles = (text: string): string => fillHoles(text, () => "");

/** Puts the texts of a template together with holes between them. */
export const withHoles = (texts: readonly string[]): string =>
  texts.map((text, index) => (index === 0 ? text : hole(index - 1) + text)).join("");

/** The source of a template literal; `expression` gives that of each hole. */
export function literal(text: string, expression: (index: number) => string): string {
  const inner = text.replace(/[\\`\ue000-\uf8ff]|\$\{|\r/g, (sign) => {
    const index = holeAt(sign);
    if (index !== undefined) return `\${${expression(index)}}`;
    return sign === "\r" ? "\\r" : `\\${sign}`;
  });
  return `\`${inner}\``;
}
