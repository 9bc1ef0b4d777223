/** Where a person's record is kept: in the browser's database, or, where that is refused, in the memory of the page. */

import type { RecordEvent } from "../../engine/competency/event.ts";
import { t } from "../../engine/words.ts";

/** The trainee's own key, as it can be taken along. */
export interface Owner {
  /** did:key. */
  readonly did: string;
  /** 32 bytes; whoever has them can sign as this person. */
  readonly secret: Uint8Array;
}

/** When the record was last handed out as a file, and how many events it had then. */
export interface SavedFile {
  readonly at: string;
  readonly events: number;
}

/** What is kept besides events. */
export interface Own {
  readonly owner: Owner;
  readonly name: string;
  /** When the name was chosen, RFC 3339 in UTC. */
  readonly named: string;
  readonly saved: SavedFile | undefined;
}

export interface Kept extends Own {
  /** In no order. */
  readonly events: readonly RecordEvent[];
}

export interface Shelf {
  /** Undefined where nobody has begun a record here. */
  read(): Promise<Kept | undefined>;
  /** Begins a record with this key, unless there is one already, and reads what is there then. */
  begin(owner: Owner): Promise<Kept>;
  /** Adds to the record of this owner; an event that is there already stays as it is. Rejects with `OtherOwner`, and where there is no room. */
  add(owner: string, events: readonly RecordEvent[]): Promise<void>;
  /** Changes the name, or when it was saved, of the record of this owner. Rejects as `add` does. */
  change(owner: string, change: Partial<Omit<Own, "owner">>): Promise<void>;
  /** Puts another key in the place of this owner's, as long as there is no event. Rejects with `OtherOwner`, and with `NotEmpty`. */
  replace(owner: string, by: Owner): Promise<void>;
  /** Takes everything away. */
  erase(): Promise<void>;
}

/** The record is not the one that the page began with: it was erased, or another one taken up, in another window. */
export class OtherOwner extends Error {
  override readonly name = "OtherOwner";
}

/** There are events under the key already. */
export class NotEmpty extends Error {
  override readonly name = "NotEmpty";
}

/** How a record is called until a name is chosen. One that was chosen at any time is later than this. */
export const noName = { name: t`no name yet`, named: "1970-01-01T00:00:00.000Z" } as const;

/** What a record begins with. */
export const beginning = (owner: Owner): Own => ({ owner, ...noName, saved: undefined });
