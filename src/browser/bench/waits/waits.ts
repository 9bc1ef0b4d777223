/** The waits of the page: which step has one, which run, and what is done at their end. */
import { t } from "../../../engine/words.ts";
import type { BenchWait } from "../../../model/page-data.ts";
import type { Card } from "../cards.ts";
import type { Keeper } from "../keeper.ts";
import { numberOf } from "../progress.ts";
import type { Said } from "../said.ts";
import { endedUntold, leftOf, startTimer, type Timer, toldAll, withoutTimer, withTimer } from "./timers.ts";
import { clockWords, overWords, type WaitTold } from "./wait-words.ts";

/** How often what is left is shown anew, in milliseconds. */
const beat = 1000;

export interface WaitsOptions {
  readonly cards: readonly Card[];
  readonly waits: readonly BenchWait[];
  readonly keeper: Keeper;
  readonly said: Said;
  /** Milliseconds since 1970. */
  readonly clock: () => number;
  /** Called with the words when waits have ended. */
  readonly onEnd: (words: string) => void;
}

export class Waits {
  readonly #options: WaitsOptions;
  readonly #views: (() => void)[] = [];
  readonly known: ReadonlyMap<string, BenchWait>;

  constructor(options: WaitsOptions) {
    this.#options = options;
    this.known = new Map(options.waits.map((wait) => [wait.step, wait]));
    const look = (): void => this.look();
    setInterval(look, beat);
    document.addEventListener("visibilitychange", look);
    addEventListener("pageshow", look);
    options.keeper.watch(() => this.#show());
  }

  /** Calls a view whenever the time or a timer has changed. */
  watch(view: () => void): void {
    this.#views.push(view);
    view();
  }

  get timers(): readonly Timer[] {
    return this.#options.keeper.place.timers;
  }

  told(timer: Timer): WaitTold {
    const now = this.#options.clock();
    return {
      number: numberOf(this.#options.cards, timer.step),
      dries: this.known.get(timer.step)?.dries ?? false,
      left: leftOf(timer, now),
      clock: clockWords(timer.ends, now),
    };
  }

  start(wait: BenchWait, focus: HTMLElement): void {
    const { keeper, clock, said } = this.#options;
    keeper.change({ timers: startTimer(this.timers, wait.step, wait.minutes, clock()) });
    const timer = this.timers.find(({ step }) => step === wait.step)!;
    const { clock: end, number } = this.told(timer);
    said.say(t`The wait after step ${number} runs until ${end}.`, this.#undoOf(timer, false, focus));
  }

  stop(timer: Timer, focus: HTMLElement): void {
    this.#options.keeper.change({ timers: withoutTimer(this.timers, timer.step) });
    const { number, left } = this.told(timer);
    const words =
      left === 0
        ? t`The wait after step ${number} is put away.`
        : t`The wait after step ${number} is stopped.`;
    this.#options.said.say(words, this.#undoOf(timer, true, focus));
  }

  #undoOf(timer: Timer, runs: boolean, focus: HTMLElement) {
    const { number } = this.told(timer);
    return {
      act: () =>
        this.#options.keeper.change({
          timers: runs ? withTimer(this.timers, timer) : withoutTimer(this.timers, timer.step),
        }),
      words: runs
        ? t`The wait after step ${number} runs as before.`
        : t`The wait after step ${number} is stopped.`,
      focus,
    };
  }

  /** Looks at the clock: what has ended is told once. */
  look(): void {
    if (this.timers.length === 0) return;
    const now = this.#options.clock();
    const ended = endedUntold(this.timers, now);
    if (ended.length === 0) {
      this.#show();
      return;
    }
    this.#options.keeper.change({ timers: toldAll(this.timers, now) });
    this.#options.onEnd(ended.map((timer) => overWords(this.told(timer))).join(" "));
  }

  #show(): void {
    for (const view of this.#views) view();
  }
}
