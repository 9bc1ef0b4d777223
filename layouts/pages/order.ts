/** The order of a module's steps: how free it is, drawn, and in words. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";
import { taskHead } from "../interactive/head.ts";
import { drawing } from "../precedence/drawing.ts";
import { orderFigures } from "../precedence/figures.ts";
import { key } from "../precedence/marks.ts";
import { precedenceWords } from "../precedence/words.ts";

/** For a module with steps. */
export function orderPage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "order", id: module.id };
  return frame({
    address: from,
    title: t`Order: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: ["drawing"],
    description: t`What must come before what in “${module.title}”, and what is free.`,
    main: html`<div class="sheet order">
${taskHead(module, from, t`Order of steps`)}
<p class="lead">The written order is one that works. Here is what in it has to be so, and what may be done otherwise.</p>
${orderFigures(view.orders)}<section class="group" aria-labelledby="s_drawing">
<h2 id="s_drawing">What must come before what, drawn</h2>
<p>Each box leads to its step on the operation sheet. Steps that no way of lines joins may change places. <span class="on-screen">A wide drawing scrolls across; <a href="#s_words">the same stands in words</a> below it.</span></p>
${key(view)}${drawing(view, from)}</section>
<section class="group" aria-labelledby="s_words">
<h2 id="s_words">The same in words</h2>
<p>Only what binds directly is told: a step that comes after another comes after all that stands before that one as well.</p>
${precedenceWords(view, from)}</section>
</div>`,
  });
}
