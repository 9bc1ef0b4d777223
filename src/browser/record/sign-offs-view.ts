/** The sign-offs of a record: what holds, what does not and why, and a statement of each to print. */
import { lastDay } from "../../engine/competency/calendar.ts";
import type { JudgedSignOff, SignedSignOff } from "../../engine/competency/support.ts";
import { button, element } from "../page/element.ts";
import { levelWords } from "./log-words.ts";
import type { Naming } from "./next-words.ts";
import type { Overview } from "./overview.ts";

export interface SignOffsOptions {
  readonly overview: Overview;
  readonly naming: Naming;
  readonly print: (signOff: SignedSignOff) => void;
}

export function signOffsView({ overview, naming, print }: SignOffsOptions): HTMLElement {
  const section = element(
    "section",
    { class: "group", "aria-labelledby": "s_sign-offs" },
    element("h2", { id: "s_sign-offs" }, "Sign-offs"),
  );
  if (overview.signOffs.length === 0) section.append(element("p", {}, none));
  else section.append(table(overview, naming, print));
  return section;
}

const none =
  "None yet. When a module is ready, a mentor watches you, signs on their own device, and hands you a file; add it to your record below.";

function table(
  { signOffs, situation }: Overview,
  naming: Naming,
  print: SignOffsOptions["print"],
): HTMLElement {
  const names = ["Module", "May work", "Signed", "Until", "Holds", ""];
  const rows = signOffs.map((each) => row(each, situation.rules.timeZone, naming, print));
  return element(
    "table",
    { class: "ruled sign-offs" },
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        ...names.map((name) => (name === "" ? element("td") : element("th", { scope: "col" }, name))),
      ),
    ),
    element("tbody", {}, ...rows),
  );
}

function row(
  { signed, problems }: JudgedSignOff,
  timeZone: string,
  { day }: Naming,
  print: SignOffsOptions["print"],
): HTMLElement {
  const { statement } = signed;
  const until = signed.until === undefined ? "no end" : day(lastDay(signed.until, timeZone));
  const cell = (name: string, ...content: (Node | string)[]) =>
    element("td", { "data-name": name }, ...content);
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, statement.title, element("small", {}, `revision ${statement.revision}`)),
    cell("May work", levelWords[statement.level]),
    cell("Signed", `${statement.issuerName}, ${day(signed.day)}`),
    cell("Until", until),
    cell(
      "Holds",
      problems.length === 0 ? "yes" : `no: ${problems.map(({ code }) => code).join(", ")}`,
      ...reasons(problems),
    ),
    element(
      "td",
      {},
      button("Statement", () => print(signed), { "aria-label": `Statement of sign-off: ${statement.title}` }),
    ),
  );
}

const reasons = (problems: JudgedSignOff["problems"]): HTMLElement[] =>
  problems.map(({ message }) => element("small", {}, message));
