/** Sittings that a mentor marks elsewhere: the site does not have the key of a supervised quiz. */

import type { QuizEvent } from "../../engine/competency/event.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import type { Overview } from "../record/overview.ts";

/** Nothing where there is no such sitting. */
export function supervisedNote({ assessed }: Overview, card: ReleaseCard): HTMLElement[] {
  const sittings = assessed.events.filter((event): event is QuizEvent => {
    const marked = assessed.rescored.get(event.id);
    return (
      event.kind === "quiz" &&
      event.module === card.module &&
      marked?.ok === true &&
      marked.verdict.kind === "handed in"
    );
  });
  const last = sittings.at(-1);
  if (last === undefined) return [];
  const file = `${card.module}-answers.json`;
  return [
    element(
      "p",
      {},
      t`The sitting was supervised and can’t be marked here: the site does not have the key of that quiz. Save the answers, and where the programme’s content is, run benchwright score --quiz modules/${card.module}/quiz.yaml --answers ${file}. Make sure that it was the paper you gave out (${last.seed}), and write the percent that it prints into the sign-off below.`,
    ),
    element(
      "div",
      { class: "actions" },
      button(t`Save the answers for score`, () => saveFile(file, answersText(last))),
    ),
  ];
}

/** As `score` reads it: the seed draws the paper, and a later one prefers what earlier ones did not ask. */
export const answersText = ({
  answers,
  seed,
  preferred,
}: Pick<QuizEvent, "answers" | "seed" | "preferred">): string =>
  `${JSON.stringify({ answers: Object.fromEntries(answers), seed, preferred }, null, 1)}\n`;
