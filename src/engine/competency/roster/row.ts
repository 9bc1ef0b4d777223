/** One person of the roster: small, so that there may be many, and made of one record at a time. */
import { type Assessed, assess } from "../assessed.ts";
import { isUsable } from "../judged.ts";
import { isAlone } from "../past-sign-off.ts";
import type { Primitives } from "../primitives.ts";
import type { CompetencyRecord } from "../record.ts";
import type { Situation } from "../situation.ts";
import { statesIn } from "../standing.ts";
import type { ModuleState } from "../state.ts";
import { type JudgedSignOff, judgeSignOffs } from "../support.ts";

export interface RosterRow {
  /** The key of the record, and all that are theirs. */
  readonly owner: string;
  readonly keys: readonly string[];
  readonly name: string;
  /** The files that it was made of, and when the newest of them was written: RFC 3339 in UTC. */
  readonly files: readonly string[];
  readonly written: string;
  /** Those that they have begun. */
  readonly states: ReadonlyMap<string, ModuleState>;
  /** By module: the revisions on which a sign-off counts; and those on which they have done anything. */
  readonly signedOn: ReadonlyMap<string, readonly number[]>;
  readonly workedOn: ReadonlyMap<string, readonly number[]>;
  /** By module: the revisions on which there is a sign-off by who may sign that lacks some of what it must rest on. */
  readonly unsupported: ReadonlyMap<string, readonly number[]>;
}

export interface HandedIn {
  readonly record: CompetencyRecord;
  readonly files: readonly string[];
  readonly written: string;
}

/** O(size of the record), and a signature for each statement. */
export function rosterRow(handedIn: HandedIn, situation: Situation, primitives: Primitives): RosterRow {
  const { record, files, written } = handedIn;
  const assessed = assess(record, situation, primitives);
  const signOffs = judgeSignOffs(assessed, situation);
  const states = [...statesIn(assessed, situation, signOffs)].filter(
    ([, { standing }]) => standing !== "not begun",
  );
  return {
    owner: record.owner,
    keys: [...assessed.keys],
    ...{ name: record.name, files, written },
    states: new Map(states),
    signedOn: revisionsOf(signOffs.filter(counts).map(({ signed }) => signed.statement)),
    workedOn: revisionsOf(workOf(assessed)),
    unsupported: revisionsOf(signOffs.filter(isUnsupported).map(({ signed }) => signed.statement)),
  };
}

const counts = ({ signed, problems }: JudgedSignOff): boolean =>
  problems.length === 0 && isAlone(signed.statement.level);

const isUnsupported = ({ signed, problems }: JudgedSignOff): boolean =>
  isAlone(signed.statement.level) &&
  problems.some(({ code }) => code === "evidence") &&
  isUsable(problems, ["evidence", "lapsed", "revision", "status-list"]);

type OfRevision = { readonly module: string; readonly revision: number };

function workOf({ events, judged }: Assessed): OfRevision[] {
  const own = events.flatMap((event) => ("module" in event ? [event] : []));
  const watched = judged.flatMap(({ signed: { statement } }) => ("module" in statement ? [statement] : []));
  return [...own, ...watched];
}

function revisionsOf(list: readonly OfRevision[]): Map<string, number[]> {
  const found = new Map<string, Set<number>>();
  for (const { module, revision } of list) {
    const known = found.get(module);
    if (known === undefined) found.set(module, new Set([revision]));
    else known.add(revision);
  }
  return new Map([...found].map(([module, revisions]) => [module, [...revisions].sort((a, b) => a - b)]));
}
