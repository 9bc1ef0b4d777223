/** The practice page: the steps of a job, to be put in an order that works. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { NamedStep, PracticeData, PracticeTask } from "../../src/model/page-data.ts";
import type { Programme } from "../../src/model/programme.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { counted } from "../words.ts";
import { faultsLine } from "./faults.ts";
import { taskHead } from "./head.ts";
import { paperSteps } from "./paper-steps.ts";
import { recordedOn, scriptsOf } from "./recorded.ts";

export function practicePage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "practice", id: module.id };
  const { programme } = book.site;
  const data = practiceData(view, programme, from);
  return frame({
    address: from,
    title: t`Practice: ${module.title}`,
    programme,
    assets: book.assets,
    scripts: scriptsOf(programme, "practice"),
    description: t`Put the steps of “${module.title}” in order.`,
    data,
    main: html`<div class="sheet task practice">
${taskHead(module, from, t`Practise the order`)}
<p class="lead">Put the steps in an order that works at the bench. Often more than one does; any of them is right.</p>
<p class="needs-script">To practise here, the page needs JavaScript, which is off or has not come. Without it: number the steps on paper, then hold your order against the operation sheet.</p>
${choice(data.practices)}${data.practices.map((task) => section(task, programme.language))}${faultsLine(from)}</div>`,
  });
}

function practiceData(view: ModuleView, programme: Programme, from: Address): PracticeData {
  const { module, practices, swaps, release } = view;
  const titles = new Map(module.procedure.steps.map(({ id, title }) => [id, title]));
  const named = (step: string): NamedStep => ({ id: step, title: titles.get(step) ?? step });
  return {
    module: module.id,
    revision: module.revision,
    record: recordedOn(programme, from),
    practices: practices.map((practice) => {
      const { id, title, graph, mixedIn } = practice;
      return {
        ...{ id, title },
        steps: graph.steps.map(named),
        mixedIn: mixedIn.map(named),
        precedence: graph,
        swaps: swaps.filter(({ first, then }) => [first, then].every((step) => graph.steps.includes(step))),
        digest: release?.practices.find((each) => each.id === id)?.digest,
      };
    }),
  };
}

const anchor = ({ id }: PracticeTask) => `practice-${id}`;

/** Links, so that it also works as a list of contents; the script shows one phase at a time. */
function choice(tasks: readonly PracticeTask[]): Html | undefined {
  if (tasks.length < 2) return undefined;
  return html`<nav class="practice-choice" aria-label="Phases">
<ul>
${tasks.map((task) => html`<li><a href="#${anchor(task)}">${task.title}</a></li>\n`)}</ul>
</nav>
`;
}

/** In alphabetical order the steps give nothing away. */
function section(task: PracticeTask, language: string): Html {
  const { compare } = new Intl.Collator(language);
  const titles = [...task.steps, ...task.mixedIn].map(({ title }) => title).sort(compare);
  const strays =
    task.mixedIn.length === 0 ? undefined : t` Some may not belong to this job: leave those out.`;
  return html`<section class="practice-task" id="${anchor(task)}" data-practice="${task.id}">
<h2>${task.title}</h2>
<p>${counted(titles.length, "step")}, here in alphabetical order.${strays}</p>
${paperSteps(titles)}</section>
`;
}
