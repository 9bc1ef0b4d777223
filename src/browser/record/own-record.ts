/** The record of whoever sits at this browser: their events, added one by one, and the file that holds them. */
import type { NewEvent, RecordEvent } from "../../engine/competency/event.ts";
import { paperSeed, withId } from "../../engine/competency/event-id.ts";
import { portable, signWith } from "../../engine/competency/libraries.ts";
import { inOrder } from "../../engine/competency/merge.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import type { Digest } from "../../engine/competency/release.ts";
import { writeRecord } from "../../engine/competency/write-record.ts";
import { tellOtherWindows } from "./channel.ts";
import { databaseShelf } from "./database-shelf.ts";
import { fileName } from "./file-name.ts";
import { memoryShelf } from "./memory-shelf.ts";
import { newOwner } from "./owner.ts";
import {
  beginning,
  type Kept,
  OtherOwner,
  type Own,
  type Owner,
  type SavedFile,
  type Shelf,
} from "./shelf.ts";
import { type Trouble, troubleWords } from "./trouble-words.ts";

type WithoutTime<Event> = Event extends NewEvent ? Omit<Event, "at"> : never;
/** What a page hands in; the record gives it its time. */
export type Happened = WithoutTime<NewEvent>;

export interface RecordFileText {
  readonly name: string;
  readonly text: string;
}

/** A record as it is kept, with its owner's key. */
export interface Held {
  readonly owner: Owner;
  readonly saved: SavedFile | undefined;
  readonly record: CompetencyRecord;
}

/** Opens the record of a programme and begins one where there is none. Never fails: at worst it is kept by the page alone. */
export async function openOwnRecord(programme: string): Promise<OwnRecord> {
  try {
    const shelf = await databaseShelf(programme);
    const { owner } = (await shelf.read()) ?? (await shelf.begin(await newOwner()));
    return new OwnRecord({ programme, shelf, owner, trouble: undefined });
  } catch {
    const shelf = memoryShelf();
    const { owner } = await shelf.begin(await newOwner());
    return new OwnRecord({ programme, shelf, owner, trouble: "denied" });
  }
}

interface OwnRecordOptions {
  readonly programme: string;
  readonly shelf: Shelf;
  readonly owner: Owner;
  readonly trouble: Trouble | undefined;
}

export class OwnRecord {
  readonly programme: string;
  readonly #shelf: Shelf;
  #owner: Owner;
  #trouble: Trouble | undefined;
  /** Events for which there was no room, newest last. */
  #unkept: readonly RecordEvent[] = [];
  #asked = false;

  constructor({ programme, shelf, owner, trouble }: OwnRecordOptions) {
    this.programme = programme;
    this.#shelf = shelf;
    this.#owner = owner;
    this.#trouble = trouble;
  }

  get owner(): string {
    return this.#owner.did;
  }

  get trouble(): Trouble | undefined {
    return this.#trouble;
  }

  /** In words; undefined where all is well. */
  troubleWords(): string | undefined {
    return this.#trouble === undefined ? undefined : troubleWords[this.#trouble];
  }

  /** The seed of the owner's paper of a quiz: nobody chooses it. */
  seedOf(quiz: Digest, attempt: number): string {
    return paperSeed(this.owner, quiz, attempt, portable);
  }

  /** Adds what happened just now, and gives the time that was written down. */
  async add(happened: Happened): Promise<string> {
    const event = withId({ ...happened, at: new Date().toISOString() } as NewEvent, portable);
    await this.keep([event]);
    void this.#askToStay();
    return event.at;
  }

  /** Adds events; what there is no room for is kept until the page is left. */
  async keep(events: readonly RecordEvent[]): Promise<void> {
    try {
      await this.#shelf.add(this.owner, events);
    } catch (error) {
      this.#trouble = error instanceof OtherOwner ? "replaced" : "full";
      this.#unkept = inOrder([...this.#unkept, ...events]);
    }
    tellOtherWindows(this.programme);
  }

  /** Some browsers clear away what was not used for some days, unless they were asked to keep it. */
  async #askToStay(): Promise<void> {
    if (this.#asked) return;
    this.#asked = true;
    await navigator.storage?.persist?.().catch(() => false);
  }

  /** Everything, as it stands now: what other windows have added is in it. */
  async held(): Promise<Held> {
    const nothing: Kept = { ...beginning(this.#owner), events: [] };
    const kept = await this.#shelf.read().catch(() => undefined);
    const { name, named, saved, events } = kept?.owner.did === this.owner ? kept : nothing;
    const all = inOrder([...events, ...this.#unkept]);
    return {
      owner: this.#owner,
      saved,
      record: { programme: this.programme, owner: this.owner, name, named, events: all },
    };
  }

  /** Goes on with the record that is there now, where another window has erased this one or taken up another key. */
  async refresh(): Promise<void> {
    const kept = await this.#shelf.read().catch(() => undefined);
    if (kept !== undefined && kept.owner.did !== this.owner) this.#owner = kept.owner;
  }

  /** The record as a file, signed by its owner. */
  async file(): Promise<RecordFileText> {
    const { record, owner } = await this.held();
    const at = new Date().toISOString();
    const sign = async (message: Uint8Array): Promise<Uint8Array> => signWith(owner.secret, message);
    const text = await writeRecord(record, { sign, written: at, primitives: portable });
    await this.change({ saved: { at, events: record.events.length } });
    return { name: fileName(record.name, at), text };
  }

  async change(change: Partial<Omit<Own, "owner">>): Promise<void> {
    try {
      await this.#shelf.change(this.owner, change);
    } catch (error) {
      this.#trouble = error instanceof OtherOwner ? "replaced" : "full";
    }
    tellOtherWindows(this.programme);
  }

  /** Goes on with another key, as long as there is no event under this one. Rejects with `NotEmpty` and `OtherOwner`. */
  async replaceOwner(by: Owner): Promise<void> {
    await this.#shelf.replace(this.owner, by);
    this.#owner = by;
    tellOtherWindows(this.programme);
  }

  /** Takes everything away and begins anew, with a new key. */
  async erase(): Promise<void> {
    await this.#shelf.erase();
    this.#unkept = [];
    this.#owner = (await this.#shelf.begin(await newOwner())).owner;
    tellOtherWindows(this.programme);
  }
}
