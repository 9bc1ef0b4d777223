/** The numbers of some steps on the page. */
import { t } from "../../src/engine/words.ts";
import type { StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";

/** Each a link. */
export function stepLinks(steps: readonly StepView[]): Html | undefined {
  return numbered(
    steps,
    steps.map(({ step, number }) => html`<a href="#${step.id}">${number}</a>`),
  );
}

/** In short, for a long list: "steps 2, 5–8". */
export function stepRanges(steps: readonly StepView[]): Html | undefined {
  const runs: { readonly first: number; last: number }[] = [];
  for (const { number } of steps) {
    const run = runs.at(-1);
    if (run?.last === number - 1) run.last = number;
    else runs.push({ first: number, last: number });
  }
  return numbered(
    steps,
    runs.map(({ first, last }) =>
      first === last ? first : `${first}${last - first > 1 ? "–" : ", "}${last}`,
    ),
    ", ",
  );
}

function numbered(
  steps: readonly StepView[],
  numbers: readonly (Html | string | number)[],
  separator = " ",
): Html | undefined {
  if (steps.length === 0) return undefined;
  return html`<small class="step-links">${steps.length === 1 ? t`step` : t`steps`} ${join(numbers, separator)}</small>`;
}
