import { createReadStream, statSync } from "node:fs";
import { BadInput } from "../command.ts";

/**
 * The lines of a file, some at a time, without holding it in memory; they end with LF, CR or both. Not by `readline`, which
 * also ends them at U+2028, as may stand within JSON, and holds a line however long it is. Throws a BadInput where there
 * is no such file, and at a line of more than `longest` characters.
 */
export async function* openLines(file: string, longest: number): AsyncGenerator<readonly string[]> {
  if (!statSync(file, { throwIfNoEntry: false })?.isFile())
    throw new BadInput(`${file}: there is no such file`);
  let rest: string | undefined;
  let number = 0;
  for await (const piece of createReadStream(file, "utf8") as AsyncIterable<string>) {
    const lines = cut(rest === undefined ? piece.replace(/^\uFEFF/, "") : rest + piece);
    rest = lines.pop()!;
    number += lines.length;
    const long = lines.findIndex((line) => line.length > longest);
    if (long >= 0 || rest.length > longest)
      throw tooLong(file, long < 0 ? number + 1 : number - lines.length + long + 1, longest);
    yield lines;
  }
  if (rest) yield [rest.replace(/\r$/, "")];
}

/** A CR at the end may be half of an end that goes on in the next piece. */
const cut = (text: string): string[] =>
  text.includes("\r") ? text.split(/\r\n|\n|\r(?!$)/) : text.split("\n");

const tooLong = (file: string, number: number, longest: number): BadInput =>
  new BadInput(`${file}:${number}: the line is longer than ${longest} characters`);
