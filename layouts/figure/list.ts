/** What the numbers of a figure are: name, count, where in the work each is moved, and where it is kept meanwhile. */
import { piecesOf } from "../../src/engine/procedure/pieces.ts";
import type { ActKind } from "../../src/engine/procedure/procedure.ts";
import { t } from "../../src/engine/words.ts";
import type { ItemReference, Module } from "../../src/model/module.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { stepLinks } from "../components/step-links.ts";
import { type Html, html, join } from "../html.ts";

/** Ids of what stands for a number: its line in the list, and its place in the figure, to which the line leads back. */
export interface ItemIds {
  row(number: number): string;
  place(number: number): string;
}

/** What each number is, with its count, the steps that move it and where it is kept. */
export function itemList(items: readonly ItemReference[], view: ModuleView, ids: ItemIds): Html {
  return html`<ol class="items">
${items.map((item) => row(item, view, ids))}</ol>
`;
}

/** The name that the figure gives, or that of the parts list. */
export function itemName({ of, name }: ItemReference, { procedure }: Module): string {
  if (name !== undefined || of === undefined) return name ?? "";
  return (procedure.parts.get(of) ?? procedure.fasteners.get(of))?.name ?? of;
}

function row(item: ItemReference, view: ModuleView, ids: ItemIds): Html {
  const { procedure } = view.module;
  const pieces = item.of === undefined ? 1 : piecesOf(item.of, procedure);
  const count = pieces > 1 ? html` <span class="item-count">× ${pieces}</span>` : undefined;
  return html`<li id="${ids.row(item.number)}"${item.of === undefined ? undefined : html` data-of="${item.of}"`}><a class="item-number" href="#${ids.place(item.number)}" data-item="${item.number}">${item.number}</a> <div><b>${itemName(item, view.module)}</b>${count}${about(item.of, view)}</div></li>
`;
}

function about(of: string | undefined, view: ModuleView): Html | undefined {
  if (of === undefined) return undefined;
  const { parts, fasteners } = view.module.procedure;
  const keep = (parts.get(of) ?? fasteners.get(of))?.keep;
  const moved = movesOf(of, view.steps);
  const isOff = moved.some(({ kind }) => kind === "remove");
  const words = [
    ...moved.map(({ kind, steps }) => html`<span>${moves[kind]} ${stepLinks(steps)}</span>`),
    moved.length === 0 ? html`<span>Left alone</span>` : undefined,
    keep !== undefined && isOff ? html`<span>Kept: ${keep}</span>` : undefined,
  ];
  return html`<div class="item-moves">${join(words, " ")}</div>`;
}

const moves: Readonly<Record<ActKind, string>> = {
  slacken: t`Slackened:`,
  remove: t`Taken off:`,
  work: t`Worked on:`,
  refit: t`Put back:`,
  tighten: t`Tightened:`,
};

const order: readonly ActKind[] = ["slacken", "remove", "work", "refit", "tighten"];

/** What is done to a thing, in the order of the work, each with its steps. */
export const movesOf = (id: string, steps: readonly StepView[]) =>
  order
    .map((kind) => ({
      kind,
      steps: steps.filter(({ step }) => step.acts.some((act) => act.kind === kind && act.target === id)),
    }))
    .filter((each) => each.steps.length > 0);
