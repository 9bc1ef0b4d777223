/** The number of a supervised paper, which the mentor gives: it draws the questions, so that nobody draws their own. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

/** `seed` is the one that draws the paper now; `draw` begins the sitting with another. */
export function paperNumber(seed: string, draw: (seed: string) => void): HTMLElement {
  const input = element("input", {
    type: "text",
    id: "paper-number",
    autocomplete: t`off`,
    maxlength: "40",
    size: "12",
    value: seed,
  });
  input.addEventListener("change", () => {
    const given = input.value.trim();
    if (given !== "" && given !== seed) draw(given);
  });
  return element(
    "p",
    { class: "number-field" },
    element("label", { for: "paper-number" }, t`Number of the paper, from your mentor`),
    input,
    element("small", {}, t`Another number draws another paper and empties all answers.`),
  );
}
