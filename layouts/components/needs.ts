/** What must come before a step and why, and with which steps it may change places; shut, for those who wonder. */

import { mergedReasons } from "../../src/engine/procedure/merged-reasons.ts";
import { t } from "../../src/engine/words.ts";
import type { StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";
import { capital, sentence } from "../words.ts";

/** `numbers` of all steps, by id. */
export function needs(
  { needs, step: { maySwap } }: StepView,
  numbers: ReadonlyMap<string, number>,
): Html | undefined {
  if (needs.length === 0 && maySwap.size === 0) return undefined;
  const critical = (is: boolean) => (is ? html` <strong>(critical)</strong>` : undefined);
  const after = needs.map((pair) => html`${numbers.get(pair.first)}${critical(pair.critical)}`);
  const heads = [
    after.length > 0 && html`Comes after ${join(after, ", ")}`,
    maySwap.size > 0 &&
      html`${after.length > 0 ? t`may` : t`May`} change places with ${listed([...maySwap.keys()], numbers)}`,
  ];
  return html`<details class="needs"><summary>${join(heads, "; ")}</summary>
<ul>${needs.map((pair) => reason(pair.first, pair.because, numbers, "", pair.critical))}${[...maySwap].map(([id, because]) => reason(id, [because], numbers, t`This step or `))}</ul></details>
`;
}

const listed = (ids: readonly string[], numbers: ReadonlyMap<string, number>): string =>
  ids.map((id) => numbers.get(id)).join(", ");

function reason(
  id: string,
  because: readonly string[],
  numbers: ReadonlyMap<string, number>,
  before = "",
  isCritical = false,
): Html {
  const words = mergedReasons(because)
    .map((one) => sentence(capital(one)))
    .join(" ");
  return html`<li${isCritical ? html` class="critical"` : undefined}>${before}<a href="#${id}">${numbers.get(id)}</a>${before === "" ? ":" : t` first:`} ${words}</li>\n`;
}
