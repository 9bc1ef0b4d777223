/** Who may do what on a day, over all who have handed in a file. */
import { holds } from "../needs.ts";
import type { RecordProblem } from "../problems.ts";
import { readiness } from "../readiness.ts";
import type { Situation } from "../situation.ts";
import type { ModuleState, Standing } from "../state.ts";
import { type Handover, handoverOf } from "./handover.ts";
import type { RosterRow } from "./row.ts";
import { sameNames } from "./same-person.ts";

/** A person with one module. */
export interface Entry {
  readonly person: RosterRow;
  readonly state: ModuleState;
}

/** Why a sign-off does not let someone work alone; "unsupported": something that it must rest on does not count, or is not there. */
export type Ending =
  | Extract<Standing, "lapsed" | "withdrawn" | "earlier revision" | "suspended" | "unconfirmed">
  | "unsupported";

export interface EndedEntry extends Entry {
  readonly because: Ending;
  /** On which it was signed. */
  readonly revision: number | undefined;
}

/** A module with those who are anywhere with it. */
export interface ModuleEntries {
  readonly module: string;
  readonly title: string;
  /** May work alone. */
  readonly alone: readonly Entry[];
  readonly toWatch: readonly Entry[];
  readonly toSign: readonly Entry[];
  /** Everyone else who has begun. */
  readonly others: readonly Entry[];
}

export interface RosterSummary {
  readonly on: string;
  /** By name. */
  readonly people: readonly RosterRow[];
  /** In the programme's order. */
  readonly modules: readonly ModuleEntries[];
  /** What lapses within the programme's `soonDays`, the first to lapse first. */
  readonly soon: readonly Entry[];
  /** There is a sign-off, and they may not work alone. */
  readonly ended: readonly EndedEntry[];
  /** Stopped for safety, and not watched again nor signed off since; the last first. */
  readonly stopped: readonly Entry[];
  /** Modules that one person holds, or nobody. */
  readonly handovers: readonly Handover[];
  readonly unheld: readonly ModuleEntries[];
  /** Groups of people who bear one name and share no key. */
  readonly sameNames: readonly (readonly RosterRow[])[];
  /** Files that are not in it. */
  readonly broken: readonly BrokenFile[];
}

export interface BrokenFile {
  readonly file: string;
  readonly problems: readonly RecordProblem[];
}

export interface RosterInput {
  /** One for each person. */
  readonly rows: readonly RosterRow[];
  readonly broken: readonly BrokenFile[];
  readonly situation: Situation;
  /** By module, what its author has marked as still to be written. */
  readonly unwritten: ReadonlyMap<string, readonly string[]>;
}

/** O(people · log people · modules begun). */
export function rosterSummary({ rows, broken, situation, unwritten }: RosterInput): RosterSummary {
  const people = rows.toSorted((a, b) => compare(a.name, b.name) || compare(a.owner, b.owner));
  const modules = modulesOf(people, situation);
  const entries = people.flatMap((person) => [...person.states.values()].map((state) => ({ person, state })));
  return {
    on: situation.on,
    people,
    modules,
    soon: entries
      .filter(({ state }) => state.standing === "lapses soon")
      .sort(by(({ state }) => state.until ?? "")),
    ended: entries.flatMap(endedEntry),
    stopped: entries
      .filter(({ state }) => state.stopped !== undefined)
      .sort(by(({ state }) => state.stopped ?? ""))
      .reverse(),
    handovers: modules.flatMap((each) => handoverOf(each, unwritten.get(each.module) ?? [])),
    unheld: modules.filter(({ alone }) => alone.length === 0),
    sameNames: sameNames(people),
    broken,
  };
}

function endedEntry(entry: Entry): EndedEntry[] {
  const { person, state } = entry;
  if (isEnding(state.standing)) return [{ ...entry, because: state.standing, revision: state.revision }];
  const revision = person.unsupported.get(state.module)?.at(-1);
  return holds(state) || revision === undefined ? [] : [{ ...entry, because: "unsupported", revision }];
}

const endings: ReadonlySet<Standing> = new Set([
  "lapsed",
  "withdrawn",
  "earlier revision",
  "suspended",
  "unconfirmed",
] as const);
const isEnding = (standing: Standing): standing is Exclude<Ending, "unsupported"> => endings.has(standing);

function modulesOf(people: readonly RosterRow[], { releases }: Situation): ModuleEntries[] {
  const lists = new Map(
    [...releases.cards.values()].map(({ module, title }) => [
      module,
      { module, title, ...({ alone: [], toWatch: [], toSign: [], others: [] } as Lists) },
    ]),
  );
  for (const person of people)
    for (const [module, state] of person.states) lists.get(module)?.[listOf(state)].push({ person, state });
  return [...lists.values()];
}

type Lists = { readonly [List in "alone" | "toWatch" | "toSign" | "others"]: Entry[] };

/** Whoever has to renew something is ready for it as anyone else is. */
function listOf(state: ModuleState): keyof Lists {
  if (holds(state)) return "alone";
  if (state.standing === "suspended" || state.standing === "unconfirmed") return "others";
  const ready = readiness(state.missing);
  if (ready === undefined) return "others";
  return ready === "watching" ? "toWatch" : "toSign";
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const by =
  (field: (entry: Entry) => string) =>
  (a: Entry, b: Entry): number =>
    compare(field(a), field(b));
