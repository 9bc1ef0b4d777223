/** The dry run: the whole procedure, performed on paper, a step at a time. */

import { packProcedure } from "../../src/engine/procedure/packed.ts";
import { performingGraph, performingPrecedence } from "../../src/engine/procedure/performing-graph.ts";
import { startingOrder } from "../../src/engine/procedure/starting-order.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleStep } from "../../src/model/module.ts";
import type { DryRunData, DryRunHazard, DryRunStep } from "../../src/model/page-data.ts";
import type { Hazard } from "../../src/model/sheet.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { hazardsNamed } from "../components/safety-message.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";
import { counted } from "../words.ts";
import { faultsLine } from "./faults.ts";
import { taskHead } from "./head.ts";
import { paperSteps } from "./paper-steps.ts";
import { recordedAs, scriptsOf } from "./recorded.ts";

/** For a module with steps. */
export function dryRunPage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "dry-run", id: module.id };
  const data = dryRunData(view, book, from);
  return frame({
    address: from,
    title: t`Dry run: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: scriptsOf(book.site.programme, "dry-run"),
    description: t`Perform “${module.title}” on paper, choosing what comes next.`,
    data,
    main: html`<div class="sheet task dry-run">
${taskHead(module, from, t`Perform it on paper`)}
<p class="lead">All ${counted(data.steps.length, "step")} in your head, before a hand goes to the machine: choose what you would do next, and watch the tray. Often more than one step can come next; any of them is right.</p>
<p class="needs-script">To perform it here, the page needs JavaScript, which is off or has not come. Without it, do it with the slips below.</p>
<div class="run-paper">
<p>Cut the slips out, or number them, in the order in which you would work. At each, say what lies on the tray. Then hold your order against the operation sheet.</p>
${paperSteps(shuffledTitles(data))}</div>
${faultsLine(from)}</div>`,
  });
}

function dryRunData({ module, release }: ModuleView, book: Book, from: Address): DryRunData {
  const { steps } = module.procedure;
  const hazards = hazardsNamed(
    steps.flatMap((step) => step.hazards),
    book,
  );
  const precedence = performingPrecedence(module.procedure);
  const procedure = packProcedure(module.procedure);
  return {
    module: module.id,
    revision: module.revision,
    steps: steps.map((step) => runStep(step, hazards, from, module.id)),
    hazards: hazards.map((hazard) => runHazard(hazard, from)),
    precedence,
    procedure,
    record: recordedAs(release?.run?.digest, book.site.programme, from),
  };
}

function runStep(step: ModuleStep, known: readonly Hazard[], from: Address, module: string): DryRunStep {
  const { id, title, hazards, mistakes } = step;
  return {
    ...{ id, title, mistakes },
    href: linkTo(from, { kind: "module", id: module, at: id }),
    hazards: known.filter((hazard) => hazards.includes(hazard.id)).map((hazard) => hazard.id),
  };
}

function runHazard({ id, title, signal, consequence }: Hazard, from: Address): DryRunHazard {
  return { id, title, signal, consequence, href: linkTo(from, { kind: "hazard", id }) };
}

/** The same on each paper of a revision, so that a mentor can go through it with several trainees. */
function shuffledTitles({ module, revision, steps, precedence }: DryRunData): string[] {
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const order = startingOrder(performingGraph(precedence), `${module}@${revision}`);
  return order.map((id) => titles.get(id) ?? id);
}
