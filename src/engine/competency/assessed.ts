/** All that a record comes to on a date but the standing itself: statements judged, evidence marked again. Read once, used by state and check. */
import { problemsWith } from "./checks/index.ts";
import type { RecordEvent } from "./event.ts";
import { isEvidence, type Rescored, rescore } from "./evidence.ts";
import { type Gathered, gather } from "./facts.ts";
import { readInstant } from "./instant.ts";
import { type Judged, statementKey } from "./judged.ts";
import { keysOf } from "./owner-keys.ts";
import type { Primitives } from "./primitives.ts";
import type { CompetencyRecord } from "./record.ts";
import type { Digest } from "./release.ts";
import { pickedPapers } from "./sittings.ts";
import type { Situation } from "./situation.ts";
import { type ReadStatement, readStatements, type SignedStatement } from "./statements.ts";

export interface Assessed {
  /** Up to the end of the date. */
  readonly events: readonly RecordEvent[];
  readonly keys: ReadonlySet<string>;
  readonly read: ReadonlyMap<Digest, ReadStatement>;
  /** Each statement once, however often it was brought in. */
  readonly judged: readonly Judged[];
  readonly rescored: ReadonlyMap<Digest, Rescored>;
  readonly gathered: Gathered;
}

/** O(size of the record), and a signature for each statement. */
export function assess(record: CompetencyRecord, situation: Situation, primitives: Primitives): Assessed {
  const { rules, releases, end } = situation;
  const events = record.events.filter(({ at }) => readInstant(at)! < end);
  const read = readStatements(events, rules, primitives);
  const statements = eachOnce([...read.values()].flatMap((each) => (each.ok ? [each.signed] : [])));
  const keys = keysOf(record.owner, statements, situation);
  const judged = statements.map((signed) => ({ signed, problems: problemsWith(signed, situation, keys) }));
  const rescored = rescoreAll(events, { releases, keys, primitives });
  return { events, keys, read, judged, rescored, gathered: gather(events, rescored) };
}

/** Of one that was brought in twice the event that comes first by its id, so that the order of events makes no difference. */
function eachOnce(statements: readonly SignedStatement[]): SignedStatement[] {
  const byId = new Map<string, SignedStatement>();
  for (const signed of statements) {
    const key = statementKey(signed);
    const before = byId.get(key);
    if (before === undefined || rank(signed) < rank(before)) byId.set(key, signed);
  }
  return [...byId.values()];
}

const rank = ({ digest, event }: SignedStatement): string => `${digest} ${event}`;

function rescoreAll(events: readonly RecordEvent[], rescoring: Parameters<typeof rescore>[1]) {
  const picked = pickedPapers(events, rescoring.releases);
  return new Map(
    events.filter(isEvidence).map((event): [Digest, Rescored] => {
      const problem = picked.get(event.id);
      return [event.id, problem === undefined ? rescore(event, rescoring) : { ok: false, problem }];
    }),
  );
}
