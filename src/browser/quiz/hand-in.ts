/** The answers of a supervised sitting, as a file for the mentor. */
import { type SittingFile, writeSitting } from "../../engine/quiz/sitting-file.ts";
import { button, element } from "../page/element.ts";

/** Offers the file for download. It never leaves the device otherwise. */
export function handInView(sitting: SittingFile, number: number, again: HTMLElement): HTMLElement {
  const name = `${sitting.module}-${number}.sitting.json`;
  return element(
    "section",
    { class: "result" },
    element("h2", { tabindex: "-1" }, "Answers closed"),
    element("p", {}, `Save the file ${name} and hand it to your mentor, who marks it. This page can’t.`),
    element(
      "div",
      { class: "actions" },
      button("Save the file", () => save(name, writeSitting(sitting))),
      again,
    ),
  );
}

function save(name: string, text: string): void {
  const href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = element("a", { href, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(href), 1000);
}
