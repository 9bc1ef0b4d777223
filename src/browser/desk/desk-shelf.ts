/** What a mentor's desk keeps in this browser: the key, trainees' files, what was signed and not handed back, the evening's notes. */
import { type DBSchema, openDB } from "idb";
import type { JsonObject } from "../../engine/competency/json.ts";
import type { Outcome } from "../../engine/competency/levels.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import { inTime } from "../page/in-time.ts";

/** A key that signs here. The browser hands out no secret of it. */
export interface KeptKey {
  readonly did: string;
  readonly key: CryptoKey;
}

export interface KeptFile {
  /** did:key of the trainee. */
  readonly owner: string;
  readonly name: string;
  readonly text: string;
}

/** A signed credential that is not in the trainee's file yet. */
export interface KeptSigned {
  /** `urn:uuid:…`. */
  readonly id: string;
  readonly kind: Statement["kind"];
  readonly subject: string;
  /** RFC 3339 in UTC. */
  readonly at: string;
  readonly credential: JsonObject;
  readonly isHanded: boolean;
}

/** What was seen on an evening, unsigned. */
export interface EveningNote {
  readonly owner: string;
  readonly module: string;
  readonly revision: number;
  /** "" where it is the whole module. */
  readonly phase: string;
  readonly ticked: readonly string[];
  readonly outcome: Outcome | undefined;
  readonly words: string;
}

interface DeskSchema extends DBSchema {
  key: { key: "mine"; value: KeptKey };
  files: { key: string; value: KeptFile };
  signed: { key: string; value: KeptSigned };
  /** Places on the mentor's list that were given away, by `did place`. */
  places: { key: string; value: { readonly did: string; readonly place: number } };
  notes: { key: string; value: EveningNote };
}

export interface DeskShelf {
  /** False where the browser keeps nothing longer than the page is open. */
  readonly isKept: boolean;
  all<Name extends "files" | "signed" | "places" | "notes">(name: Name): Promise<DeskSchema[Name]["value"][]>;
  put<Name extends StoreName>(
    name: Name,
    key: DeskSchema[Name]["key"],
    value: DeskSchema[Name]["value"],
  ): Promise<void>;
  remove<Name extends StoreName>(name: Name, key: DeskSchema[Name]["key"]): Promise<void>;
  key(): Promise<KeptKey | undefined>;
}

const stores = ["key", "files", "signed", "places", "notes"] as const;
type StoreName = (typeof stores)[number];

export const noteKey = ({ owner, module, phase }: Pick<EveningNote, "owner" | "module" | "phase">): string =>
  `${owner} ${module} ${phase}`;

/** A database that does not answer is as good as none; seconds. */
const patience = 10;

/** Never fails: where the browser denies storage, things are kept until the page is left. */
export async function openDesk(programme: string): Promise<DeskShelf> {
  try {
    return await databaseDesk(programme);
  } catch {
    return memoryDesk();
  }
}

async function databaseDesk(programme: string): Promise<DeskShelf> {
  const opening = openDB<DeskSchema>(`benchwright-desk:${programme}`, 1, {
    upgrade(database) {
      for (const name of stores) database.createObjectStore(name);
    },
    blocking: (_now, _then, event) => (event.target as IDBDatabase).close(),
  });
  const database = await inTime(opening, patience);
  return {
    isKept: true,
    all: (name) => database.getAll(name),
    put: async (name, key, value) => void (await database.put(name, value, key)),
    remove: (name, key) => database.delete(name, key),
    key: () => database.get("key", "mine"),
  };
}

function memoryDesk(): DeskShelf {
  const kept = new Map<StoreName, Map<string, unknown>>(stores.map((name) => [name, new Map()]));
  return {
    isKept: false,
    all: async (name) => [...kept.get(name)!.values()] as never,
    put: async (name, key, value) => void kept.get(name)!.set(key, value),
    remove: async (name, key) => void kept.get(name)!.delete(key),
    key: async () => kept.get("key")!.get("mine") as KeptKey | undefined,
  };
}
