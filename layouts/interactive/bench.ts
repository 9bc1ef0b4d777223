/** The bench view: what to know before work, then the steps, which the script shows one at a time. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { BenchData, BenchWait } from "../../src/model/page-data.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { afterWork } from "../components/after-work.ts";
import { beforeWork } from "../components/before-work.ts";
import { safety } from "../components/safety.ts";
import { substances } from "../components/substances.ts";
import { takenFor } from "../components/taken-for.ts";
import { tools } from "../components/tools.ts";
import { work } from "../components/work.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { divide } from "../phases.ts";
import { duration } from "../words.ts";
import { taskHead } from "./head.ts";

/** For a module with steps. */
export function benchPage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "bench", id: module.id };
  const data: BenchData = { module: module.id, revision: module.revision, waits: waits(view, book) };
  const numbers = new Map(view.steps.map(({ step, number }) => [step.id, number]));
  return frame({
    address: from,
    title: t`At the bench: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: ["bench"],
    description: t`“${module.title}”, one step at a time.`,
    data,
    main: html`<div class="sheet task bench">
${taskHead(module, from, t`At the bench`)}
<div class="bench-before" id="s_before">
<p class="needs-script">One step at a time needs JavaScript, which is off or has not come. All steps stand here one below the other.</p>
${safety(view, book, from)}${beforeWork(view, book, from)}${supplies(view, book, from)}</div>
<div class="bench-steps">
${work(divide(view).phases, { view, book, from, numbers, isApart: true })}</div>
${after(view)}</div>`,
  });
}

/** What was cleaned dries in the wait after it. */
function waits({ steps }: ModuleView, book: Book): BenchWait[] {
  return steps
    .filter(({ step }) => step.wait > 0)
    .map(({ step }) => ({
      step: step.id,
      minutes: step.wait,
      words: duration(step.wait),
      dries: step.dries || takenFor("cleaning", step, book).length > 0,
    }));
}

function supplies(view: ModuleView, book: Book, from: Address): Html | undefined {
  const content = [tools(view, book, from), substances(view, book, from)];
  if (content.every((each) => each === undefined)) return undefined;
  return html`<section class="group" aria-labelledby="s_supplies">
<h2 id="s_supplies">Lay out</h2>
${content}</section>
`;
}

const after = ({ module }: ModuleView): Html => html`<div class="bench-after" id="s_after">
${afterWork(module)}</div>
`;
