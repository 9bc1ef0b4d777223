/** The steps, phase by phase, with the plain prose among them. */
import { anchorOf } from "../../src/model/link.ts";
import type { StepView } from "../../src/model/site.ts";
import type { Section } from "../../src/model/source.ts";
import { type Html, html } from "../html.ts";
import { isStep, type PhaseOfWork } from "../phases.ts";
import { trayAccounts, traysOf } from "../tray/account.ts";
import { counted, duration } from "../words.ts";
import { plainSection } from "./plain-section.ts";
import { type StepPage, type StepPlace, step } from "./step.ts";

export function work(phases: readonly PhaseOfWork[], page: StepPage): Html {
  const accounts = trayAccounts(page.view);
  const trays = traysOf(page.view);
  const fresh = freshHazards(page.view.steps);
  const place = ({ step, number }: StepView): StepPlace => ({
    before: trays[number - 1]!,
    account: accounts[number - 1]!,
    fresh: fresh.get(step.id)!,
  });
  const show = (item: StepView | Section) =>
    isStep(item)
      ? step(item, place(item), page)
      : plainSection(item, anchorOf(item), page.view.module.path, page.book, page.from, 1);
  return html`${phases.map((phase) => html`${heading(phase, page.isApart !== true)}${phase.items.map(show)}`)}`;
}

/** For each step, the hazards that no earlier step names. */
function freshHazards(steps: readonly StepView[]): Map<string, ReadonlySet<string>> {
  const met = new Set<string>();
  return new Map(
    steps.map(({ step }) => {
      const fresh = new Set(step.hazards.filter((id) => !met.has(id)));
      for (const id of fresh) met.add(id);
      return [step.id, fresh];
    }),
  );
}

/** With a way back to the list of all steps, where they stand on one long page. */
function heading({ title, steps }: PhaseOfWork, isOnePage: boolean): Html {
  const minutes = steps.reduce((sum, each) => sum + each.step.time, 0);
  const time = minutes > 0 ? `, ${duration(minutes)}` : "";
  const back = isOnePage ? html` <a class="on-screen" href="#s_order">Order of work</a>` : undefined;
  return html`<div class="phase"><h2>${title}</h2><p>${counted(steps.length, "step")}${time}${back}</p></div>
`;
}
