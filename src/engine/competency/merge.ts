/** Two copies of a record made one. */
import type { RecordEvent } from "./event.ts";
import type { CompetencyRecord } from "./record.ts";

/**
 * The union of the events by id, and the name that was chosen later. Idempotent, commutative and associative; nothing is lost. Ids must
 * have been checked (`readRecord`). Throws a RangeError for records of two owners or programmes: see `underKey`.
 * O(events · log events).
 */
export function mergeRecords(a: CompetencyRecord, b: CompetencyRecord): CompetencyRecord {
  if (a.owner !== b.owner || a.programme !== b.programme)
    throw new RangeError("records of two owners or of two programmes are no copies of one record");
  const { name, named } = laterName(a, b);
  return { programme: a.programme, owner: a.owner, name, named, events: inOrder([...a.events, ...b.events]) };
}

/**
 * The record as its owner carries it on under another key. That the two keys are one person's is for a mentor to sign ("new-key");
 * until then what was signed for the old key counts for nothing.
 */
export const underKey = (record: CompetencyRecord, owner: string): CompetencyRecord => ({ ...record, owner });

/** By time, then id; each id once. */
export function inOrder(events: readonly RecordEvent[]): RecordEvent[] {
  const byId = new Map(events.map((event) => [event.id, event]));
  return [...byId.values()].sort((a, b) => order(a.at, b.at) || order(a.id, b.id));
}

function laterName(a: CompetencyRecord, b: CompetencyRecord): CompetencyRecord {
  return (order(a.named, b.named) || order(a.name, b.name)) < 0 ? b : a;
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
