/** The notice to stop work, in words and as a page to be hung up. */
import { html } from "../../../layouts/html.ts";
import type { Recall } from "../../engine/competency/recall.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import { plainPage } from "../plain-page.ts";

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
  const body = html`<p><b>Because:</b> ${because}</p>
<h2>May no longer work alone</h2>
<p>${people.length === 0 ? "Nobody was signed off on it." : people.join(", ")}</p>
${modules.map(({ title, people: also }) => html`<p>Nor on what builds on it: <b>${title}</b>: ${also.join(", ")}</p>\n`)}<h2>What to do</h2>
<ul>${todo.map((line) => html`<li>${line}</li>`)}</ul>
`;
  return plainPage(heading, body, style);
}

/** To be read from a wall. */
const style = `body{font-size:1.25rem;max-width:45rem}
h1{border:.25rem solid;padding:.5rem 1rem}h2{font-size:1.25rem;margin-block:1.5rem .3rem}`;
