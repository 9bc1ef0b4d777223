/** The dry run on the page: the slips still to do, the steps done, and the tray beside them. */

import type { Try } from "../../engine/procedure/perform.ts";
import { t } from "../../engine/words.ts";
import type { DryRunData, DryRunHazard, DryRunStep } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { askTwice } from "../page/ask-twice.ts";
import { element, goTo } from "../page/element.ts";
import { counted } from "../page/words.ts";
import { hindranceWords } from "./hindrance-words.ts";
import { refusalView, toldAtOnce } from "./refusal-view.ts";
import type { Run } from "./run.ts";
import { Slips } from "./slips.ts";
import { stopView } from "./stop-view.ts";
import { summaryView } from "./summary-view.ts";
import { TrayPanel } from "./tray-panel.ts";
import { pairWords, trayWords } from "./words.ts";

export interface RunViewOptions {
  readonly data: DryRunData;
  readonly run: Run;
  readonly announce: Announce;
  /** The last step was done; gives what the page is to say of it. */
  readonly finished: () => HTMLElement | undefined;
}

export class RunView {
  readonly element: HTMLElement;
  readonly #options: RunViewOptions;
  readonly #steps: ReadonlyMap<string, DryRunStep>;
  readonly #slips: Slips;
  readonly #toDo = element("section", { class: "run-open", "aria-labelledby": "run-open" });
  readonly #toDoHead = element("h2", { id: "run-open", tabindex: "-1" }, t`Still to do`);
  /** Where a stop or the summary stands, in the place of the slips. */
  readonly #told = element("div", { class: "run-told" });
  readonly #doneList = element("ol", { class: "run-list" });
  readonly #doneNone = element("p", { class: "small" }, t`Nothing yet. What you choose is listed here.`);
  readonly #tray = new TrayPanel();

  constructor(options: RunViewOptions) {
    const { steps } = options.data;
    this.#options = options;
    this.#steps = new Map(steps.map((step) => [step.id, step]));
    this.#slips = new Slips({ steps, choose: (step) => this.#choose(step) });
    const hint = element("p", { class: "small" }, t`A step that can’t be done yet says why.`);
    this.#toDo.append(this.#toDoHead, hint, this.#slips.element);
    const done = element("section", { class: "run-done", "aria-labelledby": "run-done" });
    done.append(element("h2", { id: "run-done" }, t`Done`), this.#doneNone, this.#doneList);
    const now = element("div", { class: "run-now" }, this.#toDo, this.#told);
    this.element = element("div", { class: "run" }, this.#tray.element, now, done, this.#again());
    this.#show();
  }

  #title = (step: string): string => this.#steps.get(step)?.title ?? step;

  #again(): HTMLElement {
    const { run } = this.#options;
    return askTwice({
      text: t`Start again`,
      loss: () => {
        const done = run.done().length;
        return done === 0
          ? undefined
          : t`This clears the ${counted(done, "step")} that you have done. Start again?`;
      },
      yes: t`Yes, clear them`,
      no: t`No, keep them`,
      act: () => this.#startAgain(),
    });
  }

  /** Draws everything as the run stands. */
  #show(): void {
    const { run } = this.#options;
    const stop = run.stop();
    const { isOver } = run.summary();
    this.#slips.show(run.open());
    this.#toDo.hidden = stop !== undefined || isOver;
    this.element.classList.toggle("is-told", this.#toDo.hidden);
    this.#told.replaceChildren(
      ...(stop === undefined ? [] : [this.#stopView(stop)]),
      ...(isOver ? [this.#summary()] : []),
    );
    this.#showDone();
  }

  /** The list of steps done, and the tray. */
  #showDone(): void {
    const { run, data } = this.#options;
    const done = run.done();
    this.#toDoHead.textContent = t`Still to do (${data.steps.length - done.length})`;
    this.#doneNone.hidden = done.length > 0;
    this.#doneList.hidden = done.length === 0;
    this.#doneList.replaceChildren(...done.map((step) => element("li", {}, this.#title(step))));
    this.#tray.show(run.account(), done.length, data.steps.length);
  }

  #choose(step: string): void {
    const made = this.#options.run.try(step);
    this.#after[made.verdict.kind](made);
  }

  readonly #after: Readonly<Record<Try["verdict"]["kind"], (made: Try) => void>> = {
    done: ({ step }) => this.#haveDone(step),
    refused: (made) => this.#refuse(made),
    stopped: () => {
      this.#show();
      this.#goToTold();
    },
  };

  #haveDone(step: string): void {
    const { run, announce } = this.#options;
    this.#slips.clear();
    const next = this.#slips.takeOut(step);
    if (next === undefined) {
      this.#show();
      const kept = this.#options.finished();
      if (kept !== undefined) this.#told.append(kept);
      this.#goToTold();
      return;
    }
    this.#showDone();
    this.#slips.focus(next);
    announce(t`Step ${run.done().length} done: ${this.#title(step)}. Now ${trayWords(run.account())}.`);
  }

  #refuse({ step, verdict }: Try): void {
    const { run, announce } = this.#options;
    const refusal = {
      hindrances: hindranceWords(run.hindrances(step), run.machine),
      pairs: verdict.broken.map((pair) => pairWords(pair, step, this.#title)),
    };
    this.#slips.say(step, refusalView(refusal));
    announce(t`Not yet: ${this.#title(step)}. ${toldAtOnce(refusal).join(" ")}`);
  }

  #stopView(stop: Try): HTMLElement {
    const pairs = this.#options.run.telling(stop.step, stop.verdict.critical);
    return stopView({
      step: this.#steps.get(stop.step)!,
      reasons: pairs.map((pair) => pairWords(pair, stop.step, this.#title)),
      hazards: this.#hazardsOf([stop.step, ...pairs.map(({ first }) => first)]),
      goOn: () => this.#goOn(stop.step),
    });
  }

  /** Of the step that was chosen, and of those that would have made it safe. */
  #hazardsOf(steps: readonly string[]): DryRunHazard[] {
    const ids = new Set(steps.flatMap((step) => this.#steps.get(step)?.hazards ?? []));
    return this.#options.data.hazards.filter(({ id }) => ids.has(id));
  }

  #summary(): HTMLElement {
    const { run, data } = this.#options;
    const summary = run.summary();
    const stopped = summary.stopped.map((each) => ({ ...each, pairs: run.telling(each.step, each.pairs) }));
    return summaryView({ ...summary, stopped }, data.steps);
  }

  #goOn(step: string): void {
    this.#options.run.goOn();
    this.#show();
    this.#slips.focus(step);
    this.#options.announce(t`Nothing was done. Choose again.`);
  }

  #startAgain(): void {
    this.#options.run.startAgain();
    this.#show();
    this.#options.announce(t`The slips are shuffled again, and nothing is done.`);
    goTo(this.#toDoHead);
  }

  #goToTold(): void {
    goTo(this.#told.querySelector("h2")!);
  }
}
