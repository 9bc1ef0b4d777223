/** A record as a file: written with its owner's signature, and read from anyone. */
import { t } from "../words.ts";
import { publicKeyOfDid } from "./did-key.ts";
import type { RecordEvent } from "./event.ts";
import { readEvent } from "./events.ts";
import type { Json } from "./json.ts";
import { base58 } from "./libraries.ts";
import { inOrder } from "./merge.ts";
import type { Primitives } from "./primitives.ts";
import { placed, problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import type { CompetencyRecord, RecordFile } from "./record.ts";
import { frameFault } from "./record-frame.ts";
import { readJson } from "./strict-json.ts";
import { signedBytes } from "./write-record.ts";

export { writeRecord } from "./write-record.ts";

export interface ReadRecord {
  /** Undefined where the file is no record at all. Events that are not what they should be are left out, and told in `problems`. */
  readonly record: CompetencyRecord | undefined;
  /** When the file was written, in UTC. */
  readonly written: string | undefined;
  readonly problems: readonly RecordProblem[];
}

/** Reads a record file; whether what it holds counts is not judged yet. O(size · log events). */
export function readRecord(text: string, primitives: Primitives): ReadRecord {
  const json = readJson(text);
  return json.ok ? readRecordJson(json.value, primitives) : nothing(json.problem);
}

const nothing = (found: RecordProblem): ReadRecord => ({
  record: undefined,
  written: undefined,
  problems: [found],
});

/** The same of JSON that `readJson` gave. */
export function readRecordJson(json: Json, primitives: Primitives): ReadRecord {
  const fault = frameFault(json);
  if (fault !== undefined) return nothing(fault);
  const file = json as unknown as RecordFile;
  const { programme, owner, name, named, written } = file;
  const { events, problems } = readEvents(file.events as unknown as readonly Json[], primitives);
  const signature = isSignedByOwner(file, primitives) ? [] : [unsigned(owner)];
  return {
    record: { programme, owner, name, named, events: inOrder(events) },
    written,
    problems: [...signature, ...problems],
  };
}

function readEvents(list: readonly Json[], primitives: Primitives) {
  const events: RecordEvent[] = [];
  const problems: RecordProblem[] = [];
  const ids = new Set<string>();
  for (const [place, json] of list.entries()) {
    const read = readEvent(json, primitives);
    if (!read.ok) problems.push(placed(read.problem, `events[${place}]`));
    else if (ids.has(read.event.id)) problems.push(problem("event-id", twice, `events[${place}]`));
    else {
      ids.add(read.event.id);
      events.push(read.event);
    }
  }
  return { events, problems };
}

const twice = t`This event stands in the file twice; expected each once. It counts once. The page that wrote the file would not have done so: ask where the file has been.`;

const unsigned = (owner: string): RecordProblem =>
  problem(
    "owner-signature",
    t`The signature of the file is not that of its owner (${owner}) over what it now holds: it was changed after it was saved, or by someone else. Take the file again from the trainee, as their own page saves it.`,
  );

function isSignedByOwner(file: RecordFile, { sha256, verify }: Primitives): boolean {
  const key = publicKeyOfDid(file.owner);
  const signature = signatureBytes(file.signature);
  if (key === undefined || signature === undefined) return false;
  return verify(signature, signedBytes(file, sha256), key);
}

/** 64 bytes are at most 88 letters of base58. */
function signatureBytes(text: string): Uint8Array | undefined {
  if (!/^z[1-9A-HJ-NP-Za-km-z]{1,88}$/.test(text)) return undefined;
  const bytes = base58.decode(text.slice(1));
  return bytes.length === 64 ? bytes : undefined;
}
