/** The browser's database for the record of one programme. */
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { RecordEvent } from "../../engine/competency/event.ts";
import { inTime } from "../page/in-time.ts";
import type { Own } from "./shelf.ts";

export interface RecordSchema extends DBSchema {
  /** Only ever added to. */
  events: { key: string; value: RecordEvent };
  /** One entry, `me`. */
  own: { key: "me"; value: Own };
}

export type Database = IDBPDatabase<RecordSchema>;

/** Raised when the stores change; what an older page has left is then moved in `upgrade`. */
const version = 1;

/** Sites of several programmes may stand on one host: each has a database of its own. */
export const databaseName = (programme: string): string => `benchwright-record:${programme}`;

/** A database that does not answer in so many seconds is as good as none; a slow phone must not be taken for one. */
const patience = 15;

/** Rejects where the browser denies storage, and where it does not answer. */
export function openDatabase(programme: string): Promise<Database> {
  return inTime(
    openDB<RecordSchema>(databaseName(programme), version, {
      upgrade(database) {
        database.createObjectStore("events", { keyPath: "id" });
        database.createObjectStore("own");
      },
      // A page of a later version, or an erasing one, is not kept waiting.
      blocking: (_now, _then, event) => (event.target as IDBDatabase).close(),
    }),
    patience,
  );
}

/** Opens it where there is one; undefined otherwise. Looking leaves nothing behind. */
export async function openIfThere(programme: string): Promise<Database | undefined> {
  try {
    return await inTime(
      openDB<RecordSchema>(databaseName(programme), version, {
        upgrade: (_database, from, _to, transaction) => {
          if (from > 0) return;
          transaction.done.catch(() => undefined);
          transaction.abort();
        },
      }),
      patience,
    );
  } catch {
    return undefined;
  }
}
