/** A run under way: what was tried, what follows from it, and how it is kept. */
import type { Fault } from "../../engine/procedure/fault.ts";
import type { Graph } from "../../engine/procedure/graph.ts";
import { hindrances } from "../../engine/procedure/hindrances.ts";
import { unpackProcedure, type Walkable } from "../../engine/procedure/packed.ts";
import { doneIn, type Try, tellingPairs, tryStep } from "../../engine/procedure/perform.ts";
import { performingGraph } from "../../engine/procedure/performing-graph.ts";
import type { Pair } from "../../engine/procedure/precedence.ts";
import type { Work } from "../../engine/procedure/procedure.ts";
import { type RunSummary, summaryOf } from "../../engine/procedure/run-summary.ts";
import { startingOrder } from "../../engine/procedure/starting-order.ts";
import { accountsOfTrays, type TrayAccount } from "../../engine/procedure/tray-account.ts";
import { startWalk } from "../../engine/procedure/walk.ts";
import type { DryRunData } from "../../model/page-data.ts";
import { newSeed } from "../page/seed.ts";
import type { Store } from "../page/store.ts";
import { type KeptRun, keepRun, newRun, readRun } from "./kept-run.ts";

export type RunPageData = Pick<DryRunData, "precedence" | "procedure">;

export class Run {
  readonly machine: Walkable;
  readonly #graph: Graph;
  readonly #work: ReadonlyMap<string, Work>;
  readonly #store: Store;
  #kept: KeptRun;

  /** Goes on where the store has a run of these steps. */
  constructor({ precedence, procedure }: RunPageData, store: Store) {
    this.machine = unpackProcedure(procedure);
    this.#graph = performingGraph(precedence);
    this.#work = new Map(this.machine.steps.map((step) => [step.id, step]));
    this.#store = store;
    this.#kept = readRun(store.load(), this.#graph) ?? newRun(newSeed());
    this.#keep({});
  }

  /** All steps tried, in order. */
  tried(): string[] {
    return this.#kept.tries.map(({ step }) => step);
  }

  /** In the order in which they were done. */
  done(): string[] {
    return doneIn(this.#kept.tries);
  }

  /** In an order drawn by the seed, always the same in a run. */
  open(): string[] {
    const done = new Set(this.done());
    return startingOrder(this.#graph, this.#kept.seed).filter((step) => !done.has(step));
  }

  /** The try at which the run has stopped; undefined where it goes on. */
  stop(): Try | undefined {
    const last = this.#kept.tries.at(-1);
    return last?.verdict.kind === "stopped" && !this.#kept.wentOn ? last : undefined;
  }

  try(step: string): Try {
    const made = { step, verdict: tryStep(this.#graph, new Set(this.done()), step) };
    this.#keep({ tries: [...this.#kept.tries, made], wentOn: false });
    return made;
  }

  /** Goes on after a stop, as if the step had not been tried; that it was stays written down. */
  goOn(): void {
    this.#keep({ wentOn: true });
  }

  startAgain(): void {
    this.#keep(newRun(newSeed()));
  }

  /** What stands in the way of a step at the machine as it is now. */
  hindrances(step: string): Fault[] {
    return hindrances(this.machine, this.#works(), this.#work.get(step)!);
  }

  /** Of the critical pairs that stopped the run at a step those that tell most about it. */
  telling(step: string, critical: readonly Pair[]): Pair[] {
    return tellingPairs(this.#graph, step, critical);
  }

  /** The tray as it is now, with what the last step changed. */
  account(): TrayAccount {
    const walker = startWalk(this.machine);
    const trays = [walker.tray()];
    for (const step of this.#works()) {
      walker.do(step);
      trays.push(walker.tray());
    }
    // Before the first step, nothing has changed since.
    return accountsOfTrays(this.machine, trays.length > 1 ? trays : [trays[0]!, trays[0]!]).at(-1)!;
  }

  summary(): RunSummary {
    return summaryOf(this.#graph.precedence.steps, this.#kept.tries);
  }

  #works(): Work[] {
    return this.done().map((step) => this.#work.get(step)!);
  }

  #keep(change: Partial<KeptRun>): void {
    this.#kept = { ...this.#kept, ...change };
    this.#store.save(keepRun(this.#kept));
  }
}
