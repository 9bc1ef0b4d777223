/** One trainee on the evening's list: boxes to tick, how it ended, words. Kept as it is written. */

import { t } from "../../engine/words.ts";
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
  /** Ends when the note is kept. */
  readonly write: (note: EveningNote) => Promise<void>;
  /** False where the browser keeps nothing longer than the page is open. */
  readonly isKept: boolean;
}

export function eveningCard(options: EveningCardOptions): HTMLElement {
  const { place, name, task, note, more } = options;
  const prefix = `e${place}`;
  const boxes = task.checks.map(({ step, title, check, isCritical }) => {
    const box = tickBox(
      `${prefix}-${step}`,
      isCritical ? element("strong", {}, t`critical: `) : "",
      check === undefined ? title : `${title}: ${check}`,
    );
    box.input.checked = note.ticked.includes(step);
    return { step, box };
  });
  const outcome = radios(`${prefix}-outcome`, t`How it ended for ${name}`, outcomeChoices);
  outcome.set(note.outcome);
  const words = wordsField(`${prefix}-words`, t`In words, for ${name}`);
  words.input.value = note.words;
  // Never empty: what comes and goes would move the buttons below under the finger.
  const line = element("p", { class: "small" }, "\u00a0");
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
    line,
  );
  let changes = 0;
  const changed = async (): Promise<void> => {
    changes += 1;
    const change = changes;
    line.textContent = "…";
    const said = await keptWords(options, {
      ...note,
      ticked: boxes.flatMap(({ step, box }) => (box.input.checked ? [step] : [])),
      outcome: outcome.value(),
      words: words.input.value,
    });
    if (change === changes) line.textContent = said;
  };
  card.addEventListener("change", () => void changed());
  words.input.addEventListener("input", () => void changed());
  return card;
}

/** Keeps a note and says what became of it. */
async function keptWords({ write, isKept }: EveningCardOptions, note: EveningNote): Promise<string> {
  try {
    await write(note);
    return isKept ? t`Kept on this device.` : t`Kept until you leave the page: save the notes as a file.`;
  } catch {
    return t`This browser could not keep it. Save the notes as a file before you leave the page.`;
  }
}
