/** One phase to be put in order: the list, its buttons and the verdict. */
import { answerOrder, type OrderAnswer } from "../../engine/procedure/answer-order.ts";
import type { Graph } from "../../engine/procedure/graph.ts";
import type { PracticeTask } from "../../model/page-data.ts";
import { ArrangeList } from "../arranging/arrange-list.ts";
import type { Announce } from "../page/announcer.ts";
import { button, element, goTo } from "../page/element.ts";
import { newSeed } from "../page/seed.ts";
import type { Store } from "../page/store.ts";
import { counted } from "../page/words.ts";
import { type Attempt, newAttempt, readAttempt } from "./attempt.ts";
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
}

export class Task {
  readonly #options: TaskOptions;
  readonly #list: ArrangeList;
  readonly #verdict = element("div", { class: "verdict-place" });
  #attempt: Attempt;

  constructor(options: TaskOptions) {
    const { task, graph, store, announce } = options;
    this.#options = options;
    this.#attempt = readAttempt(store.load(), graph) ?? newAttempt(graph, newSeed());
    this.#list = new ArrangeList({
      label: `${task.title}: your order`,
      steps: task.steps,
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
    const hint = `${counted(this.#options.task.steps.length, "step")}. Move a step with its buttons, with Alt and the arrow keys, or by its handle on the left.`;
    const actions = element(
      "div",
      { class: "actions" },
      button("Check this order", () => this.#check(), { class: "is-main" }),
      button("Start again", () => this.#startAgain()),
    );
    return [element("p", { class: "small" }, hint), this.#list.element, actions, this.#verdict];
  }

  #keep(change: Partial<Attempt>): void {
    this.#attempt = { ...this.#attempt, ...change };
    this.#options.store.save(this.#attempt);
    this.#options.changed(this.#attempt);
  }

  #title = (step: string): string => this.#options.task.steps.find(({ id }) => id === step)?.title ?? step;

  #check(): void {
    const { graph, task } = this.#options;
    const given = this.#list.order();
    const answer = answerOrder(graph, given, this.#title);
    this.#keep({ right: answer.valid && !this.#attempt.shown });
    const written = task.steps.map(({ id }) => id);
    const view = verdictView(verdictOn(answer, given, written, this.#title), answer.valid);
    if (!answer.valid) view.append(button("Show me", () => this.#showMe(answer)));
    this.#verdict.replaceChildren(view);
    goTo(view.querySelector("h3")!);
  }

  #showMe({ fix }: OrderAnswer): void {
    this.#keep({ shown: true });
    const view = mendingView({
      list: this.#list,
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
      headline: "Now the order is right.",
      detail: "Start again to do it yourself.",
      lines: [],
    };
    const view = verdictView(verdict, true);
    this.#verdict.replaceChildren(view);
    goTo(view.querySelector("h3")!);
  }

  #startAgain(): void {
    this.#keep(newAttempt(this.#options.graph, newSeed()));
    this.#verdict.replaceChildren();
    this.#list.place(this.#attempt.order);
    this.#options.announce("The steps are shuffled again.");
    goTo(this.#list.element.querySelector<HTMLElement>(".arrange-row")!);
  }
}
