/** The operation sheet of a module: everything from the title block to the sources on one page. */

import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import { anchorOf } from "../../src/model/link.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Section } from "../../src/model/source.ts";
import type { Book } from "../book.ts";
import { afterWork, afterWorkName } from "../components/after-work.ts";
import { atAGlance } from "../components/at-a-glance.ts";
import { beforeWork } from "../components/before-work.ts";
import { contents, type PartOfPage } from "../components/contents.ts";
import { figure } from "../components/figure.ts";
import { notePlace, noteScripts } from "../components/note-place.ts";
import { orderOfWork } from "../components/order-of-work.ts";
import { fasteners, parts } from "../components/parts-list.ts";
import { plainSection } from "../components/plain-section.ts";
import { safety } from "../components/safety.ts";
import { sessions } from "../components/sessions.ts";
import { substances } from "../components/substances.ts";
import { titleBlock } from "../components/title-block.ts";
import { tools } from "../components/tools.ts";
import { work } from "../components/work.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { divide } from "../phases.ts";

export function modulePage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "module", id: module.id };
  return frame({
    address: from,
    title: module.title,
    programme: book.site.programme,
    assets: book.assets,
    scripts: noteScripts(book),
    description: module.summary,
    main: html`<div class="sheet">
${titleBlock(view, book.site.programme, view.steps.length > 0 ? t`Operation sheet` : t`Bench knowledge`)}
${body(view, book, from)}${notePlace({ kind: "read", ...module }, book, from)}</div>`,
  });
}

function body(view: ModuleView, book: Book, from: Address): Html {
  const { introduction, before, phases, after } = divide(view);
  const numbers = new Map(view.steps.map(({ step, number }) => [step.id, number]));
  const plain = (section: Section): PartOfPage => {
    const id = anchorOf(section);
    return [id, section.title, plainSection(section, id, view.module.path, book, from)];
  };
  const order = phases.length === 0 ? undefined : orderOfWork(phases, orderLink(view, from));
  const parts: readonly PartOfPage[] = [
    ...beforehand(view, book, from),
    ...before.map(plain),
    ["s_order", t`Order of work`, order],
    ["s_sessions", t`Sessions`, sessions(view, book.site.programme.session)],
    [view.steps[0]?.step.id ?? "", t`Steps`, work(phases, { view, book, from, numbers })],
    ["s_after-work", afterWorkName(view.module), afterWork(view.module)],
    ...after.map(plain),
    ["s_sources", t`Sources`, sources(view.module.sources)],
  ];
  return html`<div class="opening">
${atAGlance(view, book, from, contents(parts))}${introduction.map((each) => plain(each)[2])}${view.module.figure && figure(view.module.figure, "", { view, book, from })}</div>
${parts.map(([, , content]) => content)}`;
}

function beforehand(view: ModuleView, book: Book, from: Address): PartOfPage[] {
  const { procedure } = view.module;
  const supplies = [tools(view, book, from), substances(view, book, from)];
  return [
    ["s_safety", t`Safety`, safety(view, book, from)],
    ["s_before-work", t`Before work`, beforeWork(view, book, from)],
    group(t`Tools and substances`, "s_supplies", supplies),
    group(t`Parts and fasteners`, "s_parts", [fasteners(procedure), parts(procedure)]),
  ];
}

/** A section of the sheet; nothing where all that would stand in it is missing. */
function group(title: string, id: string, content: readonly (Html | undefined)[]): PartOfPage {
  if (content.every((each) => each === undefined)) return [id, title, undefined];
  const section = html`<section class="group" aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
${content}</section>
`;
  return [id, title, section];
}

function orderLink({ card }: ModuleView, from: Address): string | undefined {
  return card.steps.length > 1 ? linkTo(from, { kind: "order", id: card.id }) : undefined;
}

function sources(list: readonly string[]): Html | undefined {
  if (list.length === 0) return undefined;
  return html`<section class="group" aria-labelledby="s_sources">
<h2 id="s_sources">Sources</h2>
<ul class="sources">${list.map((each) => html`<li>${each}</li>`)}</ul>
</section>
`;
}
