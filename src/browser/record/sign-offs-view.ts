/** The sign-offs of a record: what holds, what does not and why, and a statement of each to print. */

import { lastDay } from "../../engine/competency/calendar.ts";
import type { JudgedSignOff } from "../../engine/competency/support.ts";
import { t } from "../../engine/words.ts";
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
    element("h2", { id: "s_sign-offs" }, t`Sign-offs`),
    signOffs.length === 0 ? element("p", {}, none) : table(signOffs, options),
    element(
      "p",
      { class: "on-screen small" },
      t`Whoever wants to be sure of a sign-off opens your file at `,
      check(options.root),
      ".",
    ),
  );
}

const none = t`None yet. When a module is ready, a mentor watches you, signs on their own device, and hands you a file; add it to your record below.`;

const check = (root: string): HTMLElement =>
  element("a", { href: `${root}check/index.html` }, t`Check a sign-off`);

const columns = [t`Module`, t`May work`, t`Signed`, t`Until`, t`Holds`, t`On paper`];

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
  const last =
    until === undefined ? t`no end` : naming.day(lastDay(until, overview.situation.rules.timeZone));
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, title, element("small", {}, t`revision ${revision}`)),
    cell(t`May work`, levelWords[level]),
    cell(t`Signed`, `${issuerName}, ${naming.day(day)}`),
    cell(t`Until`, last),
    holds(signOff),
    element(
      "td",
      {},
      button(t`Statement`, () => print(signOff), { "aria-label": t`Statement of sign-off: ${title}` }),
    ),
  );
}

const cell = (name: string, ...content: readonly (Node | string)[]): HTMLElement =>
  element("td", { "data-name": name }, ...content);

function holds({ problems }: JudgedSignOff): HTMLElement {
  const reasons = problems.map(({ message }) => element("small", {}, message));
  return cell(t`Holds`, codesOr(problems, t`yes`, t`no`), ...reasons);
}

/** `yes`, or `no` with the codes of what is against it. */
export const codesOr = (problems: JudgedSignOff["problems"], yes: string, no: string): string =>
  problems.length === 0 ? yes : `${no}: ${problems.map(({ code }) => code).join(", ")}`;
