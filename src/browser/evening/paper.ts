/** The evening sheet on paper: for each trainee a name, boxes, how it ended, and a code that opens the desk at them. */

import { outcomes } from "../../engine/competency/levels.ts";
import { t } from "../../engine/words.ts";
import type { Trainee } from "../desk/desk.ts";
import { element } from "../page/element.ts";
import { shortKey } from "../record/facts-view.ts";
import { qrCode } from "./qr.ts";
import type { EveningTask } from "./task.ts";

/** `address` is that of the desk, for a trainee's key. */
export function paperRows(
  trainees: readonly Trainee[],
  task: EveningTask,
  address: (owner: string) => string,
): HTMLElement[] {
  return trainees.map(({ overview: { record } }) =>
    element(
      "li",
      { class: "evening-row" },
      qrCode(address(record.owner), t`Code that opens the desk at ${record.name}`) as unknown as HTMLElement,
      element(
        "div",
        {},
        element("p", {}, element("strong", {}, record.name), ` ${shortKey(record.owner)}`),
        element("p", {}, t`${task.title}, revision ${task.card.revision}`),
        element("ul", {}, ...task.checks.map(checkLine)),
        element("p", {}, ...outcomes.flatMap((outcome) => [box(), paperWords[outcome]])),
        element("p", { class: "write" }),
      ),
    ),
  );
}

const paperWords = {
  watched: t`watched `,
  unaided: t`unaided `,
  "not yet": t`not yet, because `,
  "stopped for safety": t`stopped for safety`,
} as const;

const checkLine = ({ title, check, isCritical }: EveningTask["checks"][number]): HTMLElement =>
  element(
    "li",
    {},
    box(),
    isCritical ? element("strong", {}, t`critical: `) : "",
    check === undefined ? title : `${title}: ${check}`,
  );

const box = (): HTMLElement => element("span", { class: "box" });
