/** One person who has handed in several files, or goes on under a new key. */
import { grouped } from "../grouped.ts";
import { mergeRecords, underKey } from "../merge.ts";
import type { HandedIn, RosterRow } from "./row.ts";

/**
 * Rows by person: those that share a key, directly or by way of others. Where a group has more than one, read its files again, bring them
 * together (`togetherAs`) and make one row of them; so nobody's events need to be kept while the others are read.
 * In the order in which each person first comes. O(keys · log keys).
 */
export function byPerson(rows: readonly RosterRow[]): RosterRow[][] {
  const groupOf = new Map<string, Set<RosterRow>>();
  for (const row of rows) {
    const group = joined(new Set(row.keys.flatMap((key) => groupOf.get(key) ?? [])), groupOf);
    group.add(row);
    for (const key of row.keys) groupOf.set(key, group);
  }
  const groups = new Set(rows.map(({ owner }) => groupOf.get(owner)!));
  return [...groups].map((group) => [...group]);
}

/** The largest of the groups with all the others in it, so that each row moves but a few times. */
function joined(groups: ReadonlySet<Set<RosterRow>>, groupOf: Map<string, Set<RosterRow>>): Set<RosterRow> {
  const [largest = new Set<RosterRow>(), ...others] = [...groups].sort((a, b) => b.size - a.size);
  for (const row of others.flatMap((group) => [...group])) {
    largest.add(row);
    for (const key of row.keys) groupOf.set(key, largest);
  }
  return largest;
}

/**
 * The files of one person as one: under the key that goes on for the others, of equals the one handed in last. `rows` are theirs
 * (`byPerson`), `handedIn` the records of those rows' files. Throws a RangeError where there is none.
 */
export function togetherAs(rows: readonly RosterRow[], handedIn: readonly HandedIn[]): HandedIn {
  const [first] = rows.toSorted(
    (a, b) =>
      b.keys.length - a.keys.length || (a.written < b.written ? 1 : -1) || (a.owner < b.owner ? -1 : 1),
  );
  if (first === undefined || handedIn.length === 0)
    throw new RangeError("there is no file to bring together");
  return handedIn
    .map((each) => ({ ...each, record: underKey(each.record, first.owner) }))
    .reduce((a, b) => ({
      record: mergeRecords(a.record, b.record),
      files: [...new Set([...a.files, ...b.files])],
      written: [a.written, b.written].sort()[1]!,
    }));
}

/** People who bear one name and share no key: perhaps one person, for whom a mentor has not signed over the key yet. */
export const sameNames = (rows: readonly RosterRow[]): RosterRow[][] =>
  [...grouped(rows, ({ name }) => name.normalize("NFKC").trim().toLowerCase()).values()].filter(
    ({ length }) => length > 1,
  );
