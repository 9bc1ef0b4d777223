/** The roster as a program reads it, and as a table. */
import type { EveningModule } from "../../engine/competency/roster/evening.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import type { BrokenFile, EndedEntry, Entry, RosterSummary } from "../../engine/competency/roster/summary.ts";
import { type Cell, csvOf } from "../csv.ts";
import { standingWords } from "./words.ts";

export interface Roster {
  /** The programme's name. */
  readonly programme: string;
  readonly summary: RosterSummary;
  /** With those who are present; undefined where nobody was named. */
  readonly tonight: readonly EveningModule[] | undefined;
  readonly doubtful: readonly BrokenFile[];
}

const nameOf = ({ name, owner }: RosterRow) => ({ name, key: owner });
const ofEntry = ({ person, state }: Entry) => ({ ...nameOf(person), module: state.module });

const endOf = ({ because, revision, state: { until } }: EndedEntry) => ({ because, revision, until });

export function rosterJson({ summary, tonight, doubtful }: Roster) {
  const { on, people, modules, soon, ended, stopped, handovers, unheld, sameNames, broken } = summary;
  return {
    on,
    people: people.map((person) => ({
      ...nameOf(person),
      handedIn: person.written,
      files: person.files,
      modules: Object.fromEntries(
        [...person.states].map(([module, { module: _, ...state }]) => [module, state]),
      ),
    })),
    modules: modules.map(({ module, title, alone, toWatch, toSign }) => ({
      ...{ module, title },
      alone: alone.map(({ person }) => nameOf(person)),
      readyToBeWatched: toWatch.map(({ person }) => nameOf(person)),
      readyToBeSigned: toSign.map(({ person }) => nameOf(person)),
    })),
    lapsing: soon.map((entry) => ({ ...ofEntry(entry), until: entry.state.until })),
    ended: ended.map((entry) => ({ ...ofEntry(entry), ...endOf(entry) })),
    stopped: stopped.map((entry) => ({ ...ofEntry(entry), on: entry.state.stopped })),
    handovers: handovers.map(({ module, title, holder, next, unwritten }) => ({
      ...{ module, title, holder: nameOf(holder.person), unwritten },
      next: next.map(({ person, state }) => ({ ...nameOf(person), missing: state.missing })),
    })),
    unheld: unheld.map(({ module }) => module),
    sameNames: sameNames.map((group) => group.map(nameOf)),
    ...(tonight === undefined ? {} : { tonight: tonight.map(eveningJson) }),
    ...{ broken, doubtful },
  };
}

const eveningJson = ({ module, title, mentors, alone, waiting, underEye, places }: EveningModule) => ({
  ...{ module, title },
  mentors: mentors.map(({ id }) => id),
  alone: alone.map(nameOf),
  waitingForMentor: waiting.map(nameOf),
  underEye: underEye.map(nameOf),
  places: places ?? null,
});

/** A row a person, a column a module. */
export function rosterCsv({ summary: { people, modules } }: Roster): string {
  const head: Cell[] = ["name", "key", "handed_in", ...modules.map(({ module }) => module)];
  const rows = people.map((person): Cell[] => [
    ...[person.name, person.owner, person.written],
    ...modules.map(({ module }) => {
      const state = person.states.get(module);
      return state === undefined ? "" : standingWords(state);
    }),
  ]);
  return csvOf([head, ...rows]);
}
