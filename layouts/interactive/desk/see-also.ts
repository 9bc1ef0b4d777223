/** The pages of the competency record, each with what it is for. */
import { t } from "../../../src/engine/words.ts";
import { type Address, linkTo } from "../../../src/model/address.ts";
import { type Html, html } from "../../html.ts";

const pages = [
  { id: "record", name: t`My record`, what: t`for trainees: what is done, what is next, and the file of it` },
  { id: "desk", name: t`Mentor’s desk`, what: t`for mentors: look at files, watch, sign` },
  {
    id: "desk/evening",
    name: t`Evening sheet`,
    what: t`for an evening with many trainees, on paper or on the device`,
  },
  { id: "check", name: t`Check a sign-off`, what: t`for anybody who was handed a file` },
] as const;

export function seeAlso(from: Address): Html {
  const others = pages.filter(({ id }) => id !== from.id);
  return html`<nav class="group see-also" aria-labelledby="s_also">
<h2 id="s_also">Other pages of the record</h2>
<ul>
${others.map(({ id, name, what }) => html`<li><a href="${linkTo(from, { kind: "plain", id })}">${name}</a>: ${what}</li>\n`)}</ul>
</nav>
`;
}
