/** An answer on the page: what is said aloud, and what it rests on. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import type { Answer, Comparison, Figure } from "./answer.ts";

/** For the live region: the answer, what to take care of, the figures. `linkOf` leads to a thread's dimensions. */
export function answerParts(answer: Answer, linkOf: (thread: string) => string): Node[] {
  const { headline, figures, comparison, grounds } = answer;
  return [
    element("h3", {}, unbroken(headline)),
    ...(grounds.warnings.length === 0 ? [] : [named(t`Take care`, grounds.warnings, "sum-care")]),
    ...(figures.length === 0 ? [] : [figureList(figures)]),
    ...(comparison === undefined ? [] : [comparisonTable(comparison, linkOf)]),
  ];
}

/** What stands below it, to be read but not read out. */
export function groundParts({ grounds }: Answer): Node[] {
  const sources = [...new Set(grounds.sources)].join("; ");
  return [
    ...(grounds.assumptions.length === 0 ? [] : [named(t`Assumed`, grounds.assumptions, "sum-assumed")]),
    element("p", { class: "sum-sources" }, element("b", {}, t`Sources:`), ` ${sources}.`),
  ];
}

function figureList(figures: readonly Figure[]): HTMLElement {
  const isPaired = figures.some(({ also }) => also !== undefined);
  const rows = figures.map(({ name, value, also }) =>
    element(
      "div",
      {},
      element("dt", {}, name),
      element("dd", {}, value),
      isPaired ? element("dd", { class: "also" }, also ?? "") : undefined,
    ),
  );
  return element("dl", { class: "figures" }, ...rows);
}

function named(title: string, items: readonly string[], kind: string): HTMLElement {
  const list = element("ul", {}, ...items.map((item) => element("li", {}, item)));
  return element("div", { class: kind }, element("p", {}, element("b", {}, title)), list);
}

function comparisonTable(
  { caption, columns, rows }: Comparison,
  linkOf: (thread: string) => string,
): HTMLElement {
  const head = element("tr", {}, ...columns.map((name) => element("th", { scope: "col" }, name)));
  const body = rows.map(([thread = "", ...cells]) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, element("a", { href: linkOf(thread) }, thread)),
      ...cells.map((cell, at) => element("td", { "data-name": columns[at + 1] }, unbroken(cell))),
    ),
  );
  return element(
    "table",
    { class: "ruled comparison" },
    element("caption", {}, caption),
    element("thead", {}, head),
    element("tbody", {}, ...body),
  );
}

/** A figure is not parted from its unit where the line is short. */
const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(?:mm|in|N·m|lbf·ft|lbf·in|kN|lbf|m³\/h|cfm|%)(?![\w·]))/g, "$1\u00a0");
