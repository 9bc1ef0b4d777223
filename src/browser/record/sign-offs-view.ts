/** The sign-offs of a record: what holds, what does not and why, and a statement of each to print. */
import { lastDay } from "../../engine/competency/calendar.ts";
import type { JudgedSignOff } from "../../engine/competency/support.ts";
import { button, element } from "../page/element.ts";
import { levelWords } from "./log-words.ts";
import type { Naming } from "./next-words.ts";
import type { Overview } from "./overview.ts";

export interface SignOffsOptions {
  readonly overview: Overview;
  readonly naming: Naming;
  /** The way to the root of the site. */
  readonly root: string;
  readonly print: (signOff: JudgedSignOff) => void;
}

export function signOffsView(options: SignOffsOptions): HTMLElement {
  const { signOffs } = options.overview;
  return element(
    "section",
    { class: "group", "aria-labelledby": "s_sign-offs" },
    element("h2", { id: "s_sign-offs" }, "Sign-offs"),
    signOffs.length === 0 ? element("p", {}, none) : table(signOffs, options),
    element(
      "p",
      { class: "on-screen small" },
      "Whoever wants to be sure of a sign-off opens your file at ",
      check(options.root),
      ".",
    ),
  );
}

const none =
  "None yet. When a module is ready, a mentor watches you, signs on their own device, and hands you a file; add it to your record below.";

const check = (root: string): HTMLElement =>
  element("a", { href: `${root}check/index.html` }, "Check a sign-off");

const columns = ["Module", "May work", "Signed", "Until", "Holds", "On paper"];

function table(signOffs: readonly JudgedSignOff[], options: SignOffsOptions): HTMLElement {
  const head = columns.map((name) => element("th", { scope: "col" }, name));
  return element(
    "table",
    { class: "ruled sign-offs" },
    element("thead", {}, element("tr", {}, ...head)),
    element("tbody", {}, ...signOffs.map((each) => row(each, options))),
  );
}

function row(signOff: JudgedSignOff, { overview, naming, print }: SignOffsOptions): HTMLElement {
  const { statement, until, day } = signOff.signed;
  const { title, revision, level, issuerName } = statement;
  const last = until === undefined ? "no end" : naming.day(lastDay(until, overview.situation.rules.timeZone));
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, title, element("small", {}, `revision ${revision}`)),
    cell("May work", levelWords[level]),
    cell("Signed", `${issuerName}, ${naming.day(day)}`),
    cell("Until", last),
    holds(signOff),
    element(
      "td",
      {},
      button("Statement", () => print(signOff), { "aria-label": `Statement of sign-off: ${title}` }),
    ),
  );
}

const cell = (name: string, ...content: readonly (Node | string)[]): HTMLElement =>
  element("td", { "data-name": name }, ...content);

function holds({ problems }: JudgedSignOff): HTMLElement {
  const reasons = problems.map(({ message }) => element("small", {}, message));
  return cell("Holds", codesOr(problems, "yes", "no"), ...reasons);
}

/** `yes`, or `no` with the codes of what is against it. */
export const codesOr = (problems: JudgedSignOff["problems"], yes: string, no: string): string =>
  problems.length === 0 ? yes : `${no}: ${problems.map(({ code }) => code).join(", ")}`;
