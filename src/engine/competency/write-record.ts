/** Writes a record as a file with its owner's signature. */
import { without } from "./fields.ts";
import type { JsonObject } from "./json.ts";
import { base58, canonicalText, utf8 } from "./libraries.ts";
import { inOrder } from "./merge.ts";
import type { Primitives, Sign } from "./primitives.ts";
import type { CompetencyRecord, RecordFile } from "./record.ts";

/** SHA-256 of the canonical JSON of the file without its signature. */
export const signedBytes = (file: Omit<RecordFile, "signature">, sha256: Primitives["sha256"]): Uint8Array =>
  sha256(utf8(canonicalText(without(file as unknown as JsonObject, "signature"))));

export interface Writing {
  /** With the owner's key. */
  readonly sign: Sign;
  /** Now, as `writeInstant` gives it. */
  readonly written: string;
  readonly primitives: Pick<Primitives, "sha256">;
}

/** The text of a record's file, ending with a line feed. Rejects where signing fails. */
export async function writeRecord(record: CompetencyRecord, options: Writing): Promise<string> {
  const { programme, owner, name, named, events } = record;
  const file = {
    record: 1 as const,
    written: options.written,
    programme,
    owner,
    name,
    named,
    events: inOrder(events),
  };
  const signature = await options.sign(signedBytes(file, options.primitives.sha256));
  return `${JSON.stringify({ ...file, signature: `z${base58.encode(signature)}` }, null, 1)}\n`;
}
