/** Texts of files and of what commands say, as they stand. */
import { type Html, html } from "../html.ts";

/** Lines as they are, never broken, so that a mark stands under its column. A box that scrolls has to be reached by key, and named. */
export const codeFrame = (text: string, name: string): Html =>
  html`<pre tabindex="0" role="group" aria-label="${name}"><code>${text}</code></pre>`;

/** What check tells of a fault: its sentences wrap as others do, the lines of the file that it shows stand in frames. */
export const toldFault = (told: string, name: string): Html =>
  html`<div class="authors-told">${runs(told.split("\n")).map((run) =>
    isOfFile(run[0]!)
      ? codeFrame(run.join("\n"), name)
      : run.map((sentence) => html`<p><code>${sentence.trim()}</code></p>\n`),
  )}</div>`;

/** A line of a file behind its number, or the mark below it. */
const isOfFile = (line: string): boolean => /^ +(\d+ )?\|/.test(line);

/** Lines of one kind that follow each other. */
function runs(lines: readonly string[]): string[][] {
  const all: string[][] = [];
  for (const line of lines) {
    const last = all.at(-1);
    if (last !== undefined && isOfFile(last[0]!) === isOfFile(line)) last.push(line);
    else all.push([line]);
  }
  return all;
}
