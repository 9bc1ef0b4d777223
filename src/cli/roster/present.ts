/** Who is present, by the names or ids of a call. */
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import type { Mentor } from "../../engine/competency/rules.ts";
import { WrongCall } from "../command.ts";

export interface Present {
  readonly rows: readonly RosterRow[];
  /** Ids. */
  readonly mentors: ReadonlySet<string>;
}

/** Words are mentors' ids, names or keys. Someone may be both mentor and trainee. Throws a WrongCall for a word that is nobody. */
export function presentOf(list: string, people: readonly RosterRow[], mentors: readonly Mentor[]): Present {
  const words = list
    .split(",")
    .map(folded)
    .filter((word) => word !== "");
  const isNamed = (...names: readonly string[]) => names.some((name) => words.includes(folded(name)));
  const there = mentors.filter(({ id, name, key }) => isNamed(id, name, key));
  const rows = people.filter(({ name, owner }) => isNamed(name, owner));
  const known = new Set(
    [
      ...there.flatMap(({ id, name, key }) => [id, name, key]),
      ...rows.flatMap(({ name, owner }) => [name, owner]),
    ].map(folded),
  );
  const stranger = words.find((word) => !known.has(word));
  if (stranger !== undefined)
    throw new WrongCall(
      `--present: nobody is called "${stranger.slice(0, 60)}". Write names as the roster shows them, ids of mentors, or keys, with commas between.`,
    );
  return { rows, mentors: new Set(there.map(({ id }) => id)) };
}

const folded = (name: string): string => name.normalize("NFKC").trim().toLowerCase();
