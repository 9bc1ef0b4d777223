/** One job to be put in order: the list, its buttons and the verdict. */

import type { OrderAnswer } from "../../engine/procedure/answer-order.ts";
import { type ExplainedOrder, explainOrder } from "../../engine/procedure/explain-order.ts";
import type { Graph } from "../../engine/procedure/graph.ts";
import { t } from "../../engine/words.ts";
import type { NamedStep, PracticeTask } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element, goTo } from "../page/element.ts";
import { newSeed } from "../page/seed.ts";
import type { Store } from "../page/store.ts";
import { counted } from "../page/words.ts";
import { type Attempt, newAttempt, readAttempt } from "./attempt.ts";
import { JobLists } from "./job-lists.ts";
import { mendingView } from "./mending.ts";
import { verdictOn } from "./verdict.ts";
import { verdictView } from "./verdict-view.ts";

export interface TaskOptions {
  readonly task: PracticeTask;
  readonly graph: Graph;
  readonly store: Store;
  readonly announce: Announce;
  /** The attempt has changed. */
  readonly changed: (attempt: Attempt) => void;
  /** It was put right without being shown; gives what the page is to say of it. */
  readonly putRight: (given: readonly string[]) => HTMLElement | undefined;
  /** The order was checked, right or not. */
  readonly checked: (answer: ExplainedOrder) => void;
  readonly startedAgain: () => void;
}

export class Task {
  readonly #options: TaskOptions;
  /** Those that belong to the job, and those that do not. */
  readonly #steps: readonly NamedStep[];
  readonly #list: JobLists;
  readonly #verdict = element("div", { class: "verdict-place" });
  #attempt: Attempt;

  constructor(options: TaskOptions) {
    const { task, graph, store, announce } = options;
    this.#options = options;
    this.#steps = [...task.steps, ...task.mixedIn];
    this.#attempt = readAttempt(store.load(), graph, this.#strays()) ?? this.#fresh();
    this.#list = new JobLists({
      label: t`${task.title}: your order`,
      steps: this.#steps,
      mayLeaveOut: task.mixedIn.length > 0,
      announce,
      changed: () => {
        this.#verdict.replaceChildren();
        this.#keep({ order: this.#list.order(), right: false });
      },
    });
    this.#list.place(this.#attempt.order);
    this.#keep({});
  }

  /** What stands in the place of the steps to be sorted on paper. */
  parts(): HTMLElement[] {
    const moving = t`${counted(this.#steps.length, "step")}. Move a step with its buttons, with Alt and the arrow keys, or by its handle.`;
    const leaving = t` Some may not belong to this job: leave those out, with their button or with the Delete key.`;
    const hint = this.#options.task.mixedIn.length > 0 ? moving + leaving : moving;
    const actions = element(
      "div",
      { class: "actions" },
      button(t`Check this order`, () => this.#check(), { class: "is-main" }),
      button(t`Start again`, () => this.#startAgain()),
    );
    return [element("p", { class: "small" }, hint), ...this.#list.elements(), actions, this.#verdict];
  }

  #keep(change: Partial<Attempt>): void {
    this.#attempt = { ...this.#attempt, ...change };
    this.#options.store.save(this.#attempt);
    this.#options.changed(this.#attempt);
  }

  #strays(): string[] {
    return this.#options.task.mixedIn.map(({ id }) => id);
  }

  #fresh(): Attempt {
    return newAttempt(this.#options.graph, newSeed(), this.#strays());
  }

  #title = (step: string): string => this.#steps.find(({ id }) => id === step)?.title ?? step;

  #check(): void {
    const { graph, task } = this.#options;
    const given = this.#list.order();
    const answer = explainOrder(graph, given, this.#title);
    this.#options.checked(answer);
    const wasRight = this.#attempt.right;
    this.#keep({ right: answer.valid && !this.#attempt.shown });
    const written = task.steps.map(({ id }) => id);
    const verdict = verdictOn(answer, given, written, this.#title, task.swaps);
    const view = verdictView(verdict, answer.valid);
    if (!answer.valid) view.append(button(t`Show me`, () => this.#showMe(answer)));
    const kept = this.#attempt.right && !wasRight ? this.#options.putRight(given) : undefined;
    this.#verdict.replaceChildren(view, ...(kept === undefined ? [] : [kept]));
    goTo(view.querySelector("h3")!);
  }

  #showMe({ fix, extra }: OrderAnswer): void {
    this.#keep({ shown: true });
    const view = mendingView({
      list: this.#list,
      leaveOut: extra,
      moves: fix,
      title: this.#title,
      announce: this.#options.announce,
      done: () => this.#mended(),
    });
    this.#verdict.replaceChildren(view);
    view.querySelector("button")!.focus();
  }

  #mended(): void {
    this.#keep({ order: this.#list.order() });
    const verdict = {
      headline: t`Now the order is right.`,
      detail: t`Start again to do it yourself.`,
      lines: [],
    };
    const view = verdictView(verdict, true);
    this.#verdict.replaceChildren(view);
    goTo(view.querySelector("h3")!);
  }

  #startAgain(): void {
    this.#keep(this.#fresh());
    this.#options.startedAgain();
    this.#verdict.replaceChildren();
    this.#list.place(this.#attempt.order);
    this.#options.announce(t`The steps are shuffled again.`);
    goTo(this.#list.elements()[0]!.querySelector<HTMLElement>(".arrange-row")!);
  }
}
