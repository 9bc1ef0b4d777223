/** A trainee's whole record, as it is kept and handed over (`*.record.json`). */
import type { RecordEvent } from "./event.ts";

export interface CompetencyRecord {
  /** The programme's identifier. */
  readonly programme: string;
  /** did:key of the trainee. */
  readonly owner: string;
  /** As they want to be shown; nothing else is known of them. */
  readonly name: string;
  /** RFC 3339 in UTC, to the millisecond: when they chose it. Of two names the later holds when records are merged. */
  readonly named: string;
  /** By time, then id; each id once. */
  readonly events: readonly RecordEvent[];
}

/** As a file: the record, when it was written, and the owner's signature over the canonical JSON of everything else. */
export interface RecordFile extends CompetencyRecord {
  readonly record: 1;
  readonly written: string;
  /** `z` and base58btc of the Ed25519 signature. */
  readonly signature: string;
}
