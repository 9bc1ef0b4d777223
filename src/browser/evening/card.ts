/** One trainee on the evening's list: boxes to tick, how it ended, words. Kept as it is written. */

import type { EveningNote } from "../desk/desk-shelf.ts";
import { radios, tickBox, wordsField } from "../desk/fields.ts";
import { outcomeChoices } from "../desk/outcome-words.ts";
import { element } from "../page/element.ts";
import type { EveningTask } from "./task.ts";

export interface EveningCardOptions {
  readonly place: number;
  readonly name: string;
  readonly task: EveningTask;
  readonly note: EveningNote;
  /** What else is to be known, such as what is ready to be handed back. */
  readonly more: readonly (HTMLElement | undefined)[];
  readonly write: (note: EveningNote) => void;
}

export function eveningCard({ place, name, task, note, more, write }: EveningCardOptions): HTMLElement {
  const prefix = `e${place}`;
  const boxes = task.checks.map(({ step, title, check, isCritical }) => {
    const box = tickBox(
      `${prefix}-${step}`,
      isCritical ? element("strong", {}, "critical: ") : "",
      check === undefined ? title : `${title}: ${check}`,
    );
    box.input.checked = note.ticked.includes(step);
    return { step, box };
  });
  const outcome = radios(`${prefix}-outcome`, `How it ended for ${name}`, outcomeChoices);
  outcome.set(note.outcome);
  const words = wordsField(`${prefix}-words`, `In words, for ${name}`);
  words.input.value = note.words;
  const card = element(
    "section",
    { class: "evening-card desk-form", "aria-labelledby": `${prefix}-name` },
    element("h3", { id: `${prefix}-name` }, name),
    ...more,
    boxes.length === 0
      ? undefined
      : element(
          "fieldset",
          { class: "choices" },
          element("legend", {}, task.title),
          ...boxes.map(({ box }) => box.element),
        ),
    outcome.element,
    words.element,
  );
  const changed = (): void =>
    write({
      ...note,
      ticked: boxes.flatMap(({ step, box }) => (box.input.checked ? [step] : [])),
      outcome: outcome.value(),
      words: words.input.value,
    });
  card.addEventListener("change", changed);
  words.input.addEventListener("input", changed);
  return card;
}
