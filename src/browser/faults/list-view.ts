/** The list of faults on its page: by module, each with what to read and where to do it again. */
import { t } from "../../engine/words.ts";
import type { FaultsData } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import { gathered, type ListedFault, type ListedModule } from "./list.ts";
import { nothing, placeWords, sumWords } from "./words.ts";

/** What stands in the list's place; made anew whenever something was kept. */
export function listView(data: FaultsData): HTMLElement[] {
  const modules = gathered(data);
  if (modules.length === 0) return [element("p", { class: "faults-none" }, nothing)];
  const faults = modules.flatMap((module) => module.faults);
  const sum = element("p", { class: "faults-sum" }, sumWords(faults, modules.length));
  return [sum, ...modules.map((module) => moduleView(module, data))];
}

function moduleView({ module, faults, places }: ListedModule, data: FaultsData): HTMLElement {
  const heading = `faults-${module.id}`;
  const again = places.map(({ where, title }) =>
    element("li", {}, element("a", { href: againAt(where, module.id, data) }, title)),
  );
  return element(
    "section",
    { class: "group faults-module", "aria-labelledby": heading },
    element("h2", { id: heading }, element("a", { href: linkTo("module", module.id, data) }, module.title)),
    element("ul", { class: "faults" }, ...faults.map((fault) => faultView(fault, module.id, data))),
    element("p", { class: "faults-again" }, t`Do again:`),
    element("ul", { class: "faults-again" }, ...again),
  );
}

function faultView(fault: ListedFault, module: string, data: FaultsData): HTMLElement {
  const { words, about, id, critical } = fault;
  const sheet = `${linkTo("module", module, data)}#${id}`;
  const text = about === "step" ? element("a", { href: sheet }, words.text) : words.text;
  const reading =
    words.see === undefined
      ? []
      : [
          element(
            "p",
            {},
            t`Read again: `,
            element("a", { href: readAt(words.see.href, module, data) }, words.see.text),
          ),
        ];
  return element(
    "li",
    { class: critical ? "is-critical" : undefined },
    element(
      "p",
      { class: "fault" },
      critical ? element("strong", {}, t`Critical. `) : undefined,
      about === "step" ? t`Step: ` : undefined,
      text,
    ),
    ...words.notes.map((note) => element("p", { class: "fault-note" }, note)),
    ...reading,
    element("p", { class: "fault-places" }, placeWords(fault).join(" ")),
  );
}

const linkTo = (page: keyof FaultsData["links"], module: string, { links }: FaultsData): string =>
  links[page].replace("*", module);

/** A practice has a place of its own on its page. */
function againAt(where: string, module: string, data: FaultsData): string {
  const [page, id] = where.split(":");
  if (page === "practice") return `${linkTo("practice", module, data)}#practice-${id}`;
  return linkTo(page === "quiz" ? "quiz" : "dry-run", module, data);
}

/** The link as the quiz page has it, from this page. What leads off the site, or is no page, leads to the operation sheet. */
function readAt(href: string, module: string, data: FaultsData): string {
  const quiz = new URL(linkTo("quiz", module, data), location.href);
  const root = new URL(data.root, location.href).href;
  const target = URL.canParse(href, quiz.href) ? new URL(href, quiz.href).href : "";
  return target.startsWith(root) ? target : linkTo("module", module, data);
}
