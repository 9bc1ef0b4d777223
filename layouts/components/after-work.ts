/** What is checked when the work is done, what stays off, and how the job may end. */

import type { Left } from "../../src/engine/procedure/procedure.ts";
import { t } from "../../src/engine/words.ts";
import type { Module } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { checks } from "./checks.ts";
import { ends } from "./ends.ts";
import { line, lines } from "./lines.ts";
import { partWords } from "./part-words.ts";

export function afterWork(module: Module): Html | undefined {
  const content = [...told(module), hands(module)];
  if (content.every((each) => each === undefined)) return undefined;
  const kind = isTold(module) ? "group" : "group on-paper";
  return html`<section class="${kind}" aria-labelledby="s_after-work">
<h2 id="s_after-work">When the work is done</h2>
${content}</section>
`;
}

/** What the section is called where it can be led to; "" where there is none on the screen. */
export const afterWorkName = (module: Module): string => (isTold(module) ? t`When the work is done` : "");

const told = (module: Module): (Html | undefined)[] => [
  leaves(module),
  checks(module.asLeft, t`As left`, t`Left`),
  ends(module),
];

const isTold = (module: Module): boolean => told(module).some((each) => each !== undefined);

function leaves({ procedure }: Module): Html | undefined {
  if (procedure.leaves.size === 0) return undefined;
  const items = [...procedure.leaves].map(([id, left]) => {
    const set = procedure.fasteners.get(id);
    return set === undefined ? t`${partWords(id, procedure)} off` : `${set.name}: ${leftWords(left)}`;
  });
  return lines([line(t`Left so`, items.join("; "))]);
}

function leftWords({ out, slack }: Left): string {
  return [out > 0 && t`${out} out`, slack > 0 && t`${slack} slack`]
    .filter((each) => each !== false)
    .join(", ");
}

/** Lines to sign on paper; only where there was work. */
function hands({ procedure }: Module): Html | undefined {
  if (procedure.steps.length === 0) return undefined;
  return html`<dl class="hands on-paper">${[t`Machine`, t`Worked by`, t`Seen by`, t`Date`].map((name) => html`<div><dt>${name}</dt><dd></dd></div>`)}</dl>
`;
}
