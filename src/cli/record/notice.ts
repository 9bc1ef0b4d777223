/** The notice to stop work, in words and as a page to be hung up. */
import { html, raw } from "../../../layouts/html.ts";
import type { Recall } from "../../engine/competency/recall.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";

const names = (people: readonly RosterRow[]): string => people.map(({ name }) => name).join(", ");

/** `marked` is the file in which it was written that the revision no longer counts. */
export function recallText({ notice, keeping, learning }: Recall, marked: string | undefined): string {
  const { heading, because, people, modules, todo } = notice;
  const parts = [
    [heading, `Because: ${because}`],
    [`May no longer work alone: ${people.length === 0 ? "nobody" : people.join(", ")}`],
    modules.map(({ title, people: also }) => `Nor on what builds on it: ${title}: ${also.join(", ")}`),
    keeping.length === 0 ? [] : [`Signed off on another revision besides: ${names(keeping)}`],
    learning.length === 0 ? [] : [`Have learned from it, and are to learn anew: ${names(learning)}`],
    ["What to do:", ...todo.map((line) => `  - ${line}`)],
    [
      marked === undefined
        ? "Nothing is changed yet. With --mark the revision is taken back."
        : `Written: ${marked}. Commit it and build the site, so that others learn of it.`,
    ],
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

export function noticeHtml({ notice: { heading, because, people, modules, todo } }: Recall): string {
  return html`<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${heading}</title>
<style>${raw(style)}</style></head>
<body>
<h1>${heading}</h1>
<p><b>Because:</b> ${because}</p>
<h2>May no longer work alone</h2>
<p>${people.length === 0 ? "Nobody was signed off on it." : people.join(", ")}</p>
${modules.map(({ title, people: also }) => html`<p>Nor on what builds on it: <b>${title}</b>: ${also.join(", ")}</p>\n`)}<h2>What to do</h2>
<ul>${todo.map((line) => html`<li>${line}</li>`)}</ul>
</body>
</html>
`.text;
}

const style = `body{font:1.25rem/1.5 "Atkinson Hyperlegible Next",Verdana,sans-serif;margin:2rem auto;max-width:45rem;padding:0 1rem;color:#1d1b16;background:#fbf8f0}
h1{border:.25rem solid;padding:.5rem 1rem}h2{font-size:1.25rem;margin-block:1.5rem .3rem}
@media print{body{margin:0;background:none}}`;
