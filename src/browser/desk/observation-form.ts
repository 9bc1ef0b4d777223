/** An observation sheet on the device: what the module asks to look at, how it ended, in words; signed at the end. */

import type { Seen } from "../../engine/competency/new-statement.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { form, radios, tickBox, wordsField } from "./fields.ts";
import { outcomeChoices, wordsWanted } from "./outcome-words.ts";
import { asLeftText, type SheetPhase, sheetOf, withAsLeft } from "./sheet.ts";

export interface ObservationFormOptions {
  readonly card: ReleaseCard;
  /** Says in the form why it can't be signed as it stands. */
  readonly say: (words: string) => void;
  readonly sign: (seen: Seen) => void;
}

export function observationForm({ card, say, sign }: ObservationFormOptions): HTMLFormElement {
  const phases = sheetOf(card).map((phase) => phaseFields(phase, card.phases.length > 1));
  const left = card.asLeft.map((check, at) => ({
    text: asLeftText(check),
    box: tickBox(`left-${at}`, asLeftText(check)),
  }));
  const outcome = radios("outcome", t`How it ended`, outcomeChoices);
  const words = wordsField("observation-words", t`In words`);
  const send = () => {
    const ended = outcome.value();
    const seen = phases.filter(({ isWatched }) => isWatched());
    if (ended === undefined) return say(t`Choose first how it ended.`);
    if (seen.length === 0) return say(t`Choose first which phases you have watched.`);
    const wanted = wordsWanted(ended, words.input.value);
    if (wanted !== undefined) return say(wanted);
    sign({
      outcome: ended,
      phases: seen.flatMap(({ id }) => (id === "" ? [] : [id])),
      ticked: seen.flatMap(({ ticked }) => ticked()),
      words: withAsLeft(
        words.input.value,
        left.flatMap(({ text, box }) => (box.input.checked ? [text] : [])),
      ),
    });
  };
  return form(
    send,
    ...phases.map((phase) => phase.element),
    ...(left.length === 0
      ? []
      : [
          element(
            "fieldset",
            { class: "choices" },
            element("legend", {}, t`As left`),
            ...left.map(({ box }) => box.element),
          ),
        ]),
    outcome.element,
    words.element,
    element("p", { class: "actions" }, element("button", { type: "submit" }, t`Sign this observation`)),
  );
}

function phaseFields({ id, title, checks }: SheetPhase, hasPhases: boolean) {
  const watched = tickBox(`phase-${id}`, element("strong", {}, t`I have watched “${title}”`));
  const boxes = checks.map((each) => ({
    step: each.step,
    box: tickBox(
      `step-${each.step}`,
      each.isCritical ? element("strong", {}, t`critical: `) : "",
      each.check === undefined ? each.title : `${each.title}: ${each.check}`,
    ),
  }));
  // What is ticked was watched.
  for (const { box } of boxes)
    box.input.addEventListener("change", () => {
      if (box.input.checked) watched.input.checked = true;
    });
  return {
    id,
    element: element(
      "fieldset",
      { class: "choices" },
      element("legend", {}, title),
      hasPhases ? watched.element : undefined,
      ...boxes.map(({ box }) => box.element),
    ),
    isWatched: () => !hasPhases || watched.input.checked,
    ticked: () => boxes.flatMap(({ step, box }) => (box.input.checked ? [step] : [])),
  };
}
