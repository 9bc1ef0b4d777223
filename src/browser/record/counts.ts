/** Small things that follow from what is kept. */

import { t } from "../../engine/words.ts";
import type { Lapse } from "./calendar-file.ts";
import type { DayWords } from "./day-words.ts";
import { type RecordFacts, shortKey } from "./facts-view.ts";
import type { Naming } from "./next-words.ts";
import type { Overview } from "./overview.ts";
import type { Held } from "./own-record.ts";
import { noName } from "./shelf.ts";

/** What stands in the title block. */
export const factsOf = ({ record, situation }: Overview, { saved }: Held, day: DayWords): RecordFacts => ({
  name: nameOf(record),
  date: day(situation.on),
  key: shortKey(record.owner),
  saved: saved === undefined ? t`not yet` : day(saved.at.slice(0, 10)),
});

/** "" where none was chosen. */
export const nameOf = ({ name, named }: Overview["record"]): string => (named === noName.named ? "" : name);

export interface Counts {
  readonly total: number;
  /** In no file yet. Events are only added, so that what a file had is still there. */
  readonly unsaved: number;
}

export function countsOf(held: Held | undefined): Counts {
  const total = held?.record.events.length ?? 0;
  return { total, unsaved: Math.max(0, total - (held?.saved?.events ?? 0)) };
}

/** Each module whose sign-off holds and has an end. */
export function lapsesOf({ states }: Overview, { cards }: Naming): Lapse[] {
  return [...states.values()].flatMap(({ module, standing, until }) =>
    until !== undefined && (standing === "signed off" || standing === "lapses soon")
      ? [{ module, until, title: cards.get(module)?.title ?? module }]
      : [],
  );
}
