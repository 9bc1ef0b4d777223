/** The first page: whose programme this is, its modules, and how a sheet is read. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Programme } from "../../src/model/programme.ts";
import type { Book } from "../book.ts";
import { moduleTable } from "../components/module-table.ts";
import { specimen } from "../components/specimen.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";

export function homePage(book: Book): string {
  const from: Address = { kind: "plain", id: "" };
  const { programme } = book.site;
  return frame({
    address: from,
    title: "",
    programme,
    assets: book.assets,
    description: programme.summary,
    main: html`<div class="sheet home">
<header class="cover"><h1>${programme.name}</h1>
${programme.place === undefined ? undefined : html`<p class="cover-place">${programme.place}</p>\n`}${programme.summary === undefined ? undefined : html`<p class="summary">${programme.summary}</p>\n`}</header>
<section class="group" aria-labelledby="s_modules"><h2 id="s_modules">Modules</h2>
<p>What a module needs stands above it. Begin at the top, with a mentor beside you; <a href="${linkTo(from, { kind: "plain", id: "about", at: "s_alone" })}">if you work alone</a>, on machines of your own.</p>
${moduleTable(book, from)}</section>
${specimen(book, from)}<section class="group" aria-labelledby="s_look-up"><h2 id="s_look-up">To look up</h2>
<ul class="look-up">
${lookUps.filter(({ has = () => true }) => has(programme)).map(({ id, name, what }) => html`<li><a href="${linkTo(from, { kind: "plain", id })}">${name}</a> ${what}</li>\n`)}</ul></section>
</div>`,
  });
}

interface LookUp {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  /** Where not every programme has it. */
  readonly has?: (programme: Programme) => boolean;
}

const lookUps: readonly LookUp[] = [
  {
    id: "route",
    name: t`Route sheet`,
    what: t`from a first evening to working alone, stage by stage, to be printed and signed`,
  },
  {
    id: "hazards",
    name: t`Hazards`,
    what: t`what can hurt you, or the machine, and how to keep it from doing so`,
  },
  { id: "substances", name: t`Substances`, what: t`solvents, oils and greases, with what their labels say` },
  { id: "tools", name: t`Tools`, what: t`what each is good for, and how it is looked after` },
  {
    id: "record",
    name: t`My record`,
    what: t`what you have done, module by module, what is next, and what you are signed off for`,
    has: ({ identifier }) => identifier !== undefined,
  },
  {
    id: "faults",
    name: t`Faults to go over`,
    what: t`what went wrong in your quizzes, practices and dry runs, for the next workshop evening`,
  },
  { id: "sums", name: t`Sums`, what: t`units, threads, tightening torque, solvent vapour and fresh air` },
  {
    id: "sums/threads",
    name: t`Thread chart`,
    what: t`diameters, pitches and tapping drills, series by series`,
  },
  {
    id: "sums/formulas",
    name: t`Formulas`,
    what: t`what the sums reckon by, from where, and for what it holds`,
  },
  { id: "search", name: t`Search`, what: t`a step, a screw or a thread by its name` },
  { id: "about", name: t`About`, what: t`how these sheets are made, and what they don’t replace` },
];
