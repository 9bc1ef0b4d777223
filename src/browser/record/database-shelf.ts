/** Keeps a record in the browser's database. Each deed is one transaction, so that windows side by side lose nothing. */
import type { IDBPTransaction } from "idb";
import { type Database, openDatabase, type RecordSchema } from "./database.ts";
import { beginning, type Kept, NotEmpty, OtherOwner, type Own, type Shelf } from "./shelf.ts";

type Transaction = IDBPTransaction<RecordSchema, ["own", "events"], "readwrite">;

/** Rejects where the browser denies storage. */
export async function databaseShelf(programme: string): Promise<Shelf> {
  const database = await openDatabase(programme);
  const write = <Value>(deed: (transaction: Transaction) => Promise<Value>) => writing(database, deed);
  return {
    read: () => read(database),
    begin: async (owner) => {
      await write(async (transaction) => {
        const store = transaction.objectStore("own");
        if ((await store.get("me")) === undefined) await store.put(beginning(owner), "me");
      });
      return (await read(database))!;
    },
    add: (owner, events) =>
      write(async (transaction) => {
        await ownOf(transaction, owner);
        const store = transaction.objectStore("events");
        const there = new Set(await store.getAllKeys());
        await Promise.all(events.filter(({ id }) => !there.has(id)).map((event) => store.add(event)));
      }),
    change: (owner, change) =>
      write(async (transaction) => {
        const own = await ownOf(transaction, owner);
        await transaction.objectStore("own").put({ ...own, ...change }, "me");
      }),
    replace: (owner, by) =>
      write(async (transaction) => {
        const own = await ownOf(transaction, owner);
        if ((await transaction.objectStore("events").count()) > 0) throw new NotEmpty();
        await transaction.objectStore("own").put({ ...own, owner: by }, "me");
      }),
    erase: () =>
      write(async (transaction) => {
        await transaction.objectStore("own").clear();
        await transaction.objectStore("events").clear();
      }),
  };
}

async function read(database: Database): Promise<Kept | undefined> {
  const transaction = database.transaction(["own", "events"]);
  const [own, events] = await Promise.all([
    transaction.objectStore("own").get("me"),
    transaction.objectStore("events").getAll(),
  ]);
  return own === undefined ? undefined : { ...own, events };
}

/** All of a deed is done, or nothing of it. */
async function writing<Value>(
  database: Database,
  deed: (transaction: Transaction) => Promise<Value>,
): Promise<Value> {
  const transaction = database.transaction(["own", "events"], "readwrite");
  const done = transaction.done;
  done.catch(() => undefined);
  try {
    const value = await deed(transaction);
    await done;
    return value;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}

function abort(transaction: Transaction): void {
  try {
    transaction.abort();
  } catch {
    // It has failed by itself.
  }
}

async function ownOf(transaction: Transaction, owner: string): Promise<Own> {
  const own = await transaction.objectStore("own").get("me");
  if (own?.owner.did !== owner) throw new OtherOwner();
  return own;
}
