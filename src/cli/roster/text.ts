/** The roster in words. */
import type { EveningModule } from "../../engine/competency/roster/evening.ts";
import type { Handover } from "../../engine/competency/roster/handover.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import type { BrokenFile, Entry, ModuleEntries } from "../../engine/competency/roster/summary.ts";
import { counted } from "../../report/text.ts";
import type { Roster } from "./report.ts";
import { endWords, missingWords } from "./words.ts";

export interface Part {
  readonly title: string;
  readonly lines: readonly string[];
}

const names = (people: readonly RosterRow[]): string => people.map(({ name }) => name).join(", ");
const entryNames = (entries: readonly Entry[]): string => names(entries.map(({ person }) => person));

/** Parts with something in them, in the order in which a coordinator asks. */
export function partsOf(roster: Roster): Part[] {
  const { on, modules, soon, ended, stopped, handovers, unheld, sameNames, people } = roster.summary;
  const titles = new Map(modules.map(({ module, title }) => [module, title]));
  const titleOf = ({ state }: Entry): string => titles.get(state.module) ?? state.module;
  const parts: Part[] = [
    { title: "Tonight, with those present", lines: (roster.tonight ?? []).flatMap(eveningLines) },
    { title: "May work alone", lines: modules.flatMap(listLine("alone")) },
    { title: "Ready to be watched", lines: modules.flatMap(listLine("toWatch")) },
    { title: "Ready to be signed", lines: modules.flatMap(listLine("toSign")) },
    {
      title: "Stopped for safety, and not watched again since",
      lines: stopped.map((entry) => `${entry.state.stopped}  ${entry.person.name}: ${titleOf(entry)}`),
    },
    {
      title: "Lapses soon",
      lines: soon.map((entry) => `${entry.state.until}  ${entry.person.name}: ${titleOf(entry)}`),
    },
    {
      title: "Sign-offs that do not count",
      lines: ended.map((entry) => `${entry.person.name}: ${titleOf(entry)} (${endWords(entry, titles, on)})`),
    },
    { title: "Held by one person only", lines: handovers.flatMap(handoverLines) },
    { title: "Held by nobody", lines: unheld.map(({ title }) => title) },
    {
      title: "Perhaps one person",
      lines: sameNames.map((group) => `${names(group)}: ${group.flatMap(({ files }) => files).join(", ")}`),
    },
    {
      title: "Last handed in",
      lines: people.map(
        ({ name, written, files }) => `${written.slice(0, 10)}  ${name}: ${files.join(", ")}`,
      ),
    },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

const listLine =
  (list: "alone" | "toWatch" | "toSign") =>
  (module: ModuleEntries): string[] =>
    module[list].length === 0 ? [] : [`${module.title}: ${entryNames(module[list])}`];

function handoverLines({ title, holder, next, unwritten }: Handover): string[] {
  const others = next.map(({ person, state }) => {
    const missing = state.missing.map(missingWords);
    return missing.length === 0 ? person.name : `${person.name} (missing: ${missing.join(", ")})`;
  });
  return [
    `${title}: ${holder.person.name}`,
    `  next could be: ${others.length === 0 ? "nobody who has begun" : others.join("; ")}`,
    ...(unwritten.length === 0 ? [] : [`  not written down yet: ${unwritten.join("; ")}`]),
  ];
}

function eveningLines({ title, mentors, alone, waiting, underEye, places }: EveningModule): string[] {
  const watching = mentors.length === 0 ? "no mentor" : mentors.map(({ name }) => name).join(", ");
  const limit = places === undefined ? "" : `, ${places} at a time`;
  return [
    `${title} (${watching}${underEye.length > 0 ? limit : ""})`,
    ...(alone.length === 0 ? [] : [`  alone: ${names(alone)}`]),
    ...(underEye.length === 0 ? [] : [`  under a mentor's eye: ${names(underEye)}`]),
    ...(waiting.length === 0 ? [] : [`  not without a mentor for it: ${names(waiting)}`]),
  ];
}

export const rosterHead = ({ programme, summary: { on, people, modules } }: Roster): string =>
  `${programme}: ${on}, ${people.length === 1 ? "1 person" : `${people.length} people`}, ${counted(modules.length, "module")}`;

export function rosterText(roster: Roster): string {
  const parts = partsOf(roster).map(({ title, lines }) =>
    [title, ...lines.map((line) => `  ${line}`), ""].join("\n"),
  );
  return [rosterHead(roster), "", ...parts].join("\n");
}

export const faultWords = ({ summary: { broken }, doubtful }: Roster): string =>
  fileFaultWords(broken, doubtful);

/** Files that were left out, and those of which something was; "" where there are none. */
export function fileFaultWords(broken: readonly BrokenFile[], doubtful: readonly BrokenFile[]): string {
  const list = (title: string, files: readonly BrokenFile[]): string[] =>
    files.length === 0 ? [] : [`${title}:`, ...files.flatMap(fileLines)];
  return [
    ...list("Files that are left out", broken),
    ...list("Files in which something does not count", doubtful),
  ]
    .map((line) => `${line}\n`)
    .join("");
}

const fileLines = ({ file, problems }: BrokenFile): string[] => [
  `  ${file}`,
  ...problems.map(({ code, message, at }) => `    ${code}${at === undefined ? "" : ` at ${at}`}: ${message}`),
];
