/** Fills in the log that the page was built with. */

import type { ReleaseCard } from "../../engine/competency/release.ts";
import type { Missing, ModuleState } from "../../engine/competency/state.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";
import { type LogCells, logCells } from "./log-words.ts";
import { type Naming, nextWords, standingSentence } from "./next-words.ts";
import type { Overview } from "./overview.ts";

/** `root` is the way to the root of the site. */
export function fillLog(table: HTMLElement, overview: Overview, naming: Naming, root: string): void {
  for (const row of table.querySelectorAll<HTMLElement>("[data-module]")) {
    const card = naming.cards.get(row.dataset.module ?? "");
    const state = overview.states.get(row.dataset.module ?? "");
    if (card !== undefined && state !== undefined)
      fillRow(row, logCells(card, overview, naming.day), [card, state, naming, root]);
  }
}

type About = readonly [card: ReleaseCard, state: ModuleState, naming: Naming, root: string];

function fillRow(row: HTMLElement, cells: LogCells, about: About): void {
  for (const cell of row.querySelectorAll<HTMLElement>("[data-cell]")) {
    const { cell: name } = cell.dataset;
    const content = name === "next" ? nextCell(...about) : linesOf(cells[name as keyof LogCells] ?? []);
    cell.replaceChildren(...content);
  }
}

const linesOf = (lines: readonly string[]): HTMLElement[] =>
  lines.map((line, at) => element("span", { class: at === 0 ? undefined : "small" }, line));

/** How one stands, then what is missing: the first, and the others behind it. */
function nextCell(card: ReleaseCard, state: ModuleState, naming: Naming, root: string): HTMLElement[] {
  const item = (missing: Missing): HTMLElement => {
    const { text, file } = nextWords(missing, card, naming);
    return element("li", {}, file === undefined ? text : element("a", { href: root + file }, text));
  };
  const [first, ...others] = state.missing.map(item);
  return [
    element("span", { class: "standing" }, standingSentence(state, card, naming.day)),
    ...(state.stopped === undefined
      ? []
      : [element("strong", {}, t`Stopped for safety on ${naming.day(state.stopped)}: be watched again.`)]),
    ...(first === undefined ? [] : [element("ul", { class: "next" }, first)]),
    ...(others.length === 0 ? [] : [rest(others)]),
  ];
}

const rest = (items: readonly HTMLElement[]): HTMLElement =>
  element(
    "details",
    {},
    element("summary", {}, t`then ${counted(items.length, "more thing")}`),
    element("ul", { class: "next" }, ...items),
  );
