/** A critical pair would have been broken: the run stops, and what could have happened is told. */
import { signalWordNames } from "../../engine/signal-words.ts";
import { t } from "../../engine/words.ts";
import type { DryRunHazard, DryRunStep } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";
import { capital, sentence } from "../page/words.ts";

export interface StopOptions {
  readonly step: DryRunStep;
  /** Why, in sentences. */
  readonly reasons: readonly string[];
  readonly hazards: readonly DryRunHazard[];
  readonly goOn: () => void;
}

/** Its heading can have the focus. */
export function stopView({ step, reasons, hazards, goOn }: StopOptions): HTMLElement {
  return element(
    "section",
    { class: "stop", "aria-labelledby": "run-stop" },
    element("h2", { id: "run-stop", tabindex: "-1" }, t`Stop`),
    element(
      "p",
      {},
      t`You chose “`,
      element("strong", {}, step.title),
      t`”. At the bench this could hurt someone or ruin a part.`,
    ),
    element("ul", {}, ...reasons.map((reason) => element("li", {}, reason))),
    ...couldHappen(step, hazards),
    element("div", { class: "actions" }, button(t`Go on from before this step`, goOn, { class: "is-main" })),
  );
}

function couldHappen({ mistakes }: DryRunStep, hazards: readonly DryRunHazard[]): HTMLElement[] {
  if (hazards.length === 0 && mistakes.length === 0) return [];
  const wrong = mistakes.map(({ mistake, result }) =>
    element("li", {}, element("b", {}, sentence(capital(mistake))), ` ${sentence(capital(result))}`),
  );
  return [
    element("h3", {}, t`What could have happened`),
    ...hazards.map(message),
    ...(wrong.length === 0
      ? []
      : [element("p", {}, t`Often wrong at this step:`), element("ul", {}, ...wrong)]),
  ];
}

function message({ title, signal, consequence, href }: DryRunHazard): HTMLElement {
  const word = element("b", { class: `signal signal-${signal}` }, signalWordNames[signal]);
  return element(
    "div",
    { class: "message" },
    element("p", { class: "message-head" }, word, " ", element("a", { href }, title)),
    element("p", {}, sentence(consequence)),
  );
}
