/** What is open at a place in YAML: brackets and quotation marks. */

interface Open {
  readonly brackets: readonly number[];
  readonly quote: number | undefined;
}

/** Where the innermost bracket stands that is open at `end`. O(end). */
export const openBracket = (text: string, end: number): number | undefined =>
  openAt(text, end).brackets.at(-1);

/** Where the quotation mark stands whose text is not at its end at `end`. O(end). */
export const openQuote = (text: string, end: number): number | undefined => openAt(text, end).quote;

function openAt(text: string, end: number): Open {
  const brackets: number[] = [];
  let at = 0;
  while (at < end) {
    const letter = text[at]!;
    if (isQuote(letter) && beginsValue(text, at)) {
      const closed = endOfQuoted(text, at);
      if (closed >= end) return { brackets, quote: at };
      at = closed;
    } else if (letter === "#" && /[\s]/.test(text[at - 1] ?? "\n")) at = endOfLine(text, at);
    else if ((letter === "[" || letter === "{") && (brackets.length > 0 || beginsValue(text, at)))
      brackets.push(at);
    else if (letter === "]" || letter === "}") brackets.pop();
    at++;
  }
  return { brackets, quote: undefined };
}

const isQuote = (letter: string): boolean => letter === '"' || letter === "'";

/** An apostrophe or bracket inside text is text. */
const beginsValue = (text: string, at: number): boolean => {
  let before = at - 1;
  while (text[before] === " " || text[before] === "\t") before--;
  const sign = text[before];
  if (sign === undefined || sign === "\n" || sign === "[" || sign === "{" || sign === ",") return true;
  return before < at - 1 && (sign === ":" || sign === "-");
};

/** The closing mark, doubled ones ('') and escaped ones (\") passed over; the end of the text where there is none. */
function endOfQuoted(text: string, start: number): number {
  const quote = text[start]!;
  for (let at = start + 1; at < text.length; at++) {
    if (quote === '"' && text[at] === "\\") at++;
    else if (text[at] === quote && quote === "'" && text[at + 1] === quote) at++;
    else if (text[at] === quote) return at;
  }
  return text.length;
}

function endOfLine(text: string, at: number): number {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
}
