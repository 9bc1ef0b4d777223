/** The end of a run: how it went, and what to read again. */

import type { RunSummary, TooEarly } from "../../engine/procedure/run-summary.ts";
import { t } from "../../engine/words.ts";
import type { DryRunStep } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import { pairWords, summaryDetail, summaryHeadline, times } from "./words.ts";

/** `steps` in the written order. Its heading can have the focus. */
export function summaryView(summary: RunSummary, steps: readonly DryRunStep[]): HTMLElement {
  const { stopped, refused, refusals, stops, again } = summary;
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const title = (step: string): string => titles.get(step) ?? step;
  const written = steps.map(({ id }) => id);
  const links = again.map((id) => readAgain(steps[written.indexOf(id)]!, written.indexOf(id) + 1));
  return element(
    "section",
    { class: refusals + stops === 0 ? "result is-right" : "result is-wrong" },
    element("h2", { tabindex: "-1" }, summaryHeadline(summary)),
    element("p", {}, summaryDetail(summary, written)),
    ...part(
      t`Critical stops`,
      stopped.map((each) => tooEarly(each, title)),
    ),
    ...part(
      t`Too early`,
      refused.map((each) => tooEarly(each, title)),
    ),
    ...part(t`Read again`, links, "read-again"),
  );
}

function part(heading: string, lines: readonly HTMLElement[], kind?: string): HTMLElement[] {
  return lines.length === 0 ? [] : [element("h3", {}, heading), element("ul", { class: kind }, ...lines)];
}

function tooEarly({ step, times: count, pairs }: TooEarly, title: (step: string) => string): HTMLElement {
  const reasons = pairs.map((pair) => element("li", {}, pairWords(pair, step, title)));
  return element(
    "li",
    {},
    element("b", {}, title(step)),
    `, ${times(count)}`,
    element("ul", { class: "small" }, ...reasons),
  );
}

const readAgain = ({ href, title }: DryRunStep, number: number): HTMLElement =>
  element("li", {}, element("a", { href }, t`Step ${number}: ${title}`));
