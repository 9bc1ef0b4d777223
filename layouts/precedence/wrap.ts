/** Breaks a text into lines of at most `length` characters, at most `lines` of them; what is cut off ends in an ellipsis. */
export function wrap(text: string, length: number, lines: number): string[] {
  const broken: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = broken.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= length)
      broken[broken.length - 1] = `${last} ${word}`;
    else broken.push(word);
  }
  const cut = broken.slice(0, lines);
  const isCut = broken.length > lines;
  return cut.map((line, i) => shorten(line, length, isCut && i === lines - 1));
}

function shorten(line: string, length: number, isCut: boolean): string {
  if (line.length <= length && !isCut) return line;
  return `${line.slice(0, Math.min(line.length, length - 1))}…`;
}
