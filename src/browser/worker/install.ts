/** Keeps a new edition before its worker may answer: wholly, or not at all. */
import { type EditionFile, keptAtOnce } from "../../model/edition.ts";
import { NotKept } from "../offline/fetch-file.ts";
import { keepFiles } from "../offline/keep-files.ts";
import type { Standing } from "../offline/messages.ts";
import { addressIn, cacheName, readNote, writeNote } from "../offline/shelf.ts";
import type { Editions, OpenEdition } from "./editions.ts";
import { moduleOf } from "./path.ts";
import type { WorkerScope } from "./scope.ts";

/**
 * Throws where a file does not come, so that the edition before stays as it is; what came is there for the next try.
 * Where the room runs out at a first visit, the modules that it does not take are left to the network.
 */
export async function install(scope: WorkerScope, editions: Editions, version: string): Promise<void> {
  const { caches, registration } = scope;
  const root = registration.scope;
  let last: Standing = { kept: 0, of: 0 };
  try {
    const edition = await editions.begin(version);
    const { first, then } = await wantedOf(scope, edition);
    const told = (kept: number): void => {
      last = { kept, of: edition.files.size };
      void tell(scope, last);
    };
    const keeping = { caches, root, version, told };
    await keepFiles(first, keeping);
    await keepFiles(then, { ...keeping, told: (kept) => told(first.length + kept) }).catch(
      async (cause: unknown) => {
        const isRoom = cause instanceof NotKept && cause.trouble.kind === "full";
        if (!isRoom || registration.active !== null) throw cause;
        await note(scope, { ...last, trouble: cause.trouble });
      },
    );
  } catch (cause) {
    if (cause instanceof NotKept) await note(scope, { ...last, trouble: cause.trouble });
    throw cause;
  }
}

interface Wanted {
  /** What the site can't do without. */
  readonly first: readonly EditionFile[];
  readonly then: readonly EditionFile[];
}

/** Of a large edition the modules whose pages were kept before. */
async function wantedOf({ caches, registration }: WorkerScope, { files }: OpenEdition): Promise<Wanted> {
  const all = [...files.values()];
  const first = all.filter(([path]) => moduleOf(path) === undefined);
  const ofModules = all.filter(([path]) => moduleOf(path) !== undefined);
  if (all.reduce((sum, [, , bytes]) => sum + bytes, 0) <= keptAtOnce) return { first, then: ofModules };
  const before = await readNote(caches, registration.scope, "current");
  if (before === undefined) return { first, then: [] };
  const cache = await caches.open(cacheName(registration.scope, before));
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const then = ofModules.filter(([path]) => there.has(addressIn(registration.scope, path)));
  return { first, then };
}

/** A full device may have no room for the note either. */
async function note(scope: WorkerScope, standing: Standing): Promise<void> {
  await writeNote(scope.caches, scope.registration.scope, "standing", standing).catch(() => {});
  await tell(scope, standing);
}

async function tell({ clients }: WorkerScope, standing: Standing): Promise<void> {
  for (const page of await clients.matchAll({ includeUncontrolled: true })) page.postMessage(standing);
}
