/** The answers of a supervised sitting, as a file for the mentor. */

import { type SittingFile, writeSitting } from "../../engine/quiz/sitting-file.ts";
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";

/** Offers the file for download. It never leaves the device otherwise. */
export function handInView(sitting: SittingFile, number: number, again: HTMLElement): HTMLElement {
  const name = `${sitting.module}-${number}.sitting.json`;
  return element(
    "section",
    { class: "result" },
    element("h2", { tabindex: "-1" }, t`Answers closed`),
    element("p", {}, t`Save the file ${name} and hand it to your mentor, who marks it. This page can’t.`),
    element(
      "div",
      { class: "actions" },
      button(t`Save the file`, () => saveFile(name, writeSitting(sitting))),
      again,
    ),
  );
}
