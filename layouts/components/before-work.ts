/** What has to be so before work begins: modules signed off, conditions of the machine, its state as found. */
import { t, tIn } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { checks } from "./checks.ts";
import { conditions } from "./conditions.ts";
import { line, lines } from "./lines.ts";
import { moduleBefore, neededModules } from "./needed-modules.ts";

export function beforeWork(view: ModuleView, book: Book, from: Address): Html | undefined {
  const { module } = view;
  const needs = lines([
    line(t`Needs`, module.needs.length === 0 ? undefined : neededModules(module, book, from)),
    line(t`Begins`, moduleBefore(module, book, from)),
  ]);
  const content = [
    needs,
    conditions(view, book),
    checks(module.asFound, t`As found`, tIn("a column for what was found")`Found`),
  ];
  if (content.every((each) => each === undefined)) return undefined;
  return html`<section class="group before-work" aria-labelledby="s_before-work">
<h2 id="s_before-work">Before work</h2>
${content}</section>
`;
}
