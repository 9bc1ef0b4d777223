/** What stands in the cells of the log, module by module. */

import { dayOf } from "../../engine/competency/calendar.ts";
import type { RecordEvent } from "../../engine/competency/event.ts";
import { noFacts, revisionKey } from "../../engine/competency/facts.ts";
import { readInstant } from "../../engine/competency/instant.ts";
import type { Level } from "../../engine/competency/levels.ts";
import { outcomeNames } from "../../engine/competency/names.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import type { Observation } from "../../engine/competency/sign-off.ts";
import type { ModuleState } from "../../engine/competency/state.ts";
import { shareWords } from "../../engine/quiz/score-words.ts";
import { t } from "../../engine/words.ts";
import type { DayWords } from "./day-words.ts";
import type { Overview } from "./overview.ts";

/** Lines of each cell; none where there is nothing yet. */
export interface LogCells {
  readonly read: readonly string[];
  readonly quiz: readonly string[];
  readonly practice: readonly string[];
  readonly run: readonly string[];
  readonly bench: readonly string[];
  readonly signed: readonly string[];
}

export function logCells(card: ReleaseCard, overview: Overview, day: DayWords): LogCells {
  const log = new ModuleLog(card, overview, day);
  return {
    read: log.read(),
    quiz: log.quiz(),
    practice: log.practice(),
    run: log.run(),
    bench: log.bench(),
    signed: log.signed(),
  };
}

class ModuleLog {
  readonly #card: ReleaseCard;
  readonly #overview: Overview;
  readonly #day: DayWords;

  constructor(card: ReleaseCard, overview: Overview, day: DayWords) {
    this.#card = card;
    this.#overview = overview;
    this.#day = day;
  }

  get #facts() {
    return this.#overview.assessed.gathered.of.get(revisionKey(this.#card)) ?? noFacts;
  }

  get #state(): ModuleState | undefined {
    return this.#overview.states.get(this.#card.module);
  }

  /** The day of the last event of a kind on this revision that counts. */
  #last(kind: RecordEvent["kind"]): string | undefined {
    const { module, revision } = this.#card;
    const { events, rescored } = this.#overview.assessed;
    const last = events.findLast(
      (event) =>
        event.kind === kind &&
        "module" in event &&
        event.module === module &&
        event.revision === revision &&
        rescored.get(event.id)?.ok !== false,
    );
    return last && this.#day(dayOf(readInstant(last.at)!, this.#overview.situation.rules.timeZone));
  }

  read(): string[] {
    const { hazards } = this.#card;
    const known = hazards.filter(({ id }) => this.#overview.assessed.gathered.hazards.has(id)).length;
    return [
      ...(this.#facts.read ? [this.#last("read") ?? t`yes`] : []),
      ...(known === 0 ? [] : [t`hazards ${known} of ${hazards.length}`]),
    ];
  }

  quiz(): string[] {
    const { passed, best, handedIn } = this.#facts;
    const last = this.#last("quiz");
    const when = last === undefined ? [] : [last];
    if (passed !== undefined) return [t`passed, ${shareWords(passed)}`, ...when];
    if (best !== undefined) return [t`${shareWords(best)}, not passed`, ...when];
    return handedIn ? [t`handed in`, ...when] : [];
  }

  practice(): string[] {
    const { practices } = this.#card;
    const right = practices.filter(({ id }) => this.#facts.practices.has(id)).length;
    const last = this.#last("practice");
    return right === 0 || last === undefined ? [] : [t`${right} of ${practices.length}`, last];
  }

  run(): string[] {
    const last = this.#last("run");
    if (last === undefined) return [];
    return [this.#facts.run ? t`done` : t`with a critical stop`, last];
  }

  bench(): string[] {
    const { module, revision } = this.#card;
    return this.#overview.assessed.judged
      .filter(({ problems }) => problems.length === 0)
      .flatMap(({ signed }) => {
        const { statement, day } = signed;
        const isHere =
          statement.kind === "observation" && statement.module === module && statement.revision === revision;
        return isHere ? [{ day, statement }] : [];
      })
      .sort((a, b) => (a.day < b.day ? -1 : 1))
      .map(
        ({ day, statement }) =>
          `${outcomeNames[statement.outcome]}${this.#phases(statement)}, ${this.#day(day)}`,
      );
  }

  #phases({ phases }: Observation): string {
    const titles = phases.map((phase) => this.#card.phases.find(({ id }) => id === phase)?.title ?? phase);
    return titles.length === 0 ? "" : ` (${titles.join(", ")})`;
  }

  signed(): string[] {
    const { level, until, revision } = this.#state ?? {};
    if (level === undefined) return [];
    const on = revision === undefined || revision === this.#card.revision ? [] : [t`on revision ${revision}`];
    return [levelWords[level], ...on, ...(until === undefined ? [] : [t`until ${this.#day(until)}`])];
  }
}

export const levelWords: { readonly [Each in Level]: string } = {
  "under eye": t`under a mentor’s eye`,
  alone: t`alone`,
  "may teach": t`alone; may teach`,
};
